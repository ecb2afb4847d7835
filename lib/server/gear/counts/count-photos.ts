import "server-only";
import { addCountPhotoInput, countPhotoInput } from "#lib/contracts/gear.ts";
import { PHOTO_BYTES } from "#lib/contracts/hire/dockets.ts";
import { brokenRule, invalid, notFound, ok } from "#lib/kernel/result.ts";
import { projectUseCase } from "../../gate/use-case.ts";
import { pictureKind } from "../../hire/picture-kind.ts";
import { newId } from "../../platform/new-id.ts";
import { addPhotoRow, findCountPhotos, findPhoto } from "./count-store.ts";

const MOST_PHOTOS = 12;

/** Adds a photo to a locked count; it cannot be taken away again. */
export const addCountPhoto = projectUseCase("gear.addCountPhoto", "gear.count", addCountPhotoInput, async (scope, { countId, takenAt, file }) => {
  if (file.length === 0 || file.length > PHOTO_BYTES) return invalid({ field: "file", message: `Give a photo of up to ${PHOTO_BYTES / 1024 / 1024} MB.` });
  const contentType = pictureKind(file);
  if (contentType === null) return invalid({ field: "file", message: "This is no JPEG, PNG or WebP picture. Take the photo with the camera, or save it as JPEG." });
  const count = await findCountPhotos(scope, countId);
  if (!count) return notFound("count");
  if (count.photos >= MOST_PHOTOS) return brokenRule("count-photos-enough", { most: MOST_PHOTOS });
  const id = newId();
  await addPhotoRow(scope, { id, countId, contentType, bytes: file, takenAt });
  return ok({ photoId: id });
});

export const getCountPhoto = projectUseCase("gear.getCountPhoto", "gear.read", countPhotoInput, async (scope, { photoId }) => {
  const found = await findPhoto(scope, photoId);
  return found ? ok(found) : notFound("photo");
});
