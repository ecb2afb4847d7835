import "server-only";
import { addPhotoInput, PHOTO_BYTES, photoInput } from "#lib/contracts/hire/dockets.ts";
import { brokenRule, invalid, notFound, ok } from "#lib/kernel/result.ts";
import { recordChange } from "../gate/change-line.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { newId } from "../platform/new-id.ts";
import { addPhotoRow, countPhotos, findPhoto, listDockets } from "./store/docket-store.ts";

const MOST_PHOTOS = 12;

/** The kind of picture by its first bytes, whatever its name says; null for anything a page should not be given back. */
function pictureKind(bytes: Uint8Array): string | null {
  const head = Buffer.from(bytes.subarray(0, 12)).toString("latin1");
  if (head.startsWith("\u00ff\u00d8\u00ff")) return "image/jpeg";
  if (head.startsWith("\u0089PNG\r\n\u001a\n")) return "image/png";
  return head.startsWith("RIFF") && head.slice(8, 12) === "WEBP" ? "image/webp" : null;
}

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
