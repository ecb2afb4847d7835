import "server-only";
import { addPhotoInput, PHOTO_BYTES, photoInput } from "#lib/contracts/hire/dockets.ts";
import { brokenRule, invalid, notFound, ok } from "#lib/kernel/result.ts";
import { recordChange } from "../gate/change-line.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { newId } from "../platform/new-id.ts";
import { pictureKind } from "./picture-kind.ts";
import { addPhotoRow, countPhotos, findPhoto, listDockets } from "./store/docket-store.ts";

const MOST_PHOTOS = 12;

/** Adds a photo to a docket; it cannot be taken away again. */
export const addPhoto = projectUseCase("hire.addPhoto", "hire.count", addPhotoInput, async (scope, { docketId, takenAt, file }) => {
  if (file.length === 0 || file.length > PHOTO_BYTES) return invalid({ field: "file", message: `Give a photo of up to ${PHOTO_BYTES / 1024 / 1024} MB.` });
  const contentType = pictureKind(file);
  if (contentType === null) return invalid({ field: "file", message: "This is no JPEG, PNG or WebP picture. Take the photo with the camera, or save it as JPEG." });
  const docket = (await listDockets(scope)).find(({ id }) => id === docketId);
  if (!docket) return notFound("docket");
  if ((await countPhotos(scope, docketId)) >= MOST_PHOTOS) return brokenRule("photos-enough", { most: MOST_PHOTOS });
  const id = newId();
  await addPhotoRow(scope, { id, docketId, contentType, bytes: file, takenAt });
  await recordChange(scope, { kind: "set-up", detail: { hire: "photo", number: docket.number } });
  return ok({ photoId: id });
});

export const getPhoto = projectUseCase("hire.getPhoto", "hire.read", photoInput, async (scope, { photoId }) => {
  const found = await findPhoto(scope, photoId);
  return found ? ok(found) : notFound("photo");
});
