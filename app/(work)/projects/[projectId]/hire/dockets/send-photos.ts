import { addPhotoAction } from "../_parts/actions.ts";

const LONGEST_PX = 1600;

/** Small enough for a weak connection, large enough to count by; a picture the browser cannot draw goes as it is. */
export async function shrunk(file: File): Promise<Blob> {
  try {
    const picture = await createImageBitmap(file);
    const scale = Math.min(1, LONGEST_PX / Math.max(picture.width, picture.height));
    const canvas = document.createElement("canvas");
    canvas.width = Math.round(picture.width * scale);
    canvas.height = Math.round(picture.height * scale);
    canvas.getContext("2d")?.drawImage(picture, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve) => canvas.toBlob((blob) => resolve(blob ?? file), "image/jpeg", 0.8));
  } catch {
    return file;
  }
}

/** One after the other; what fails is counted, and can be added again on the docket's page. */
export async function sendPhotos(projectId: string, docketId: string, photos: readonly File[]): Promise<number> {
  let failed = 0;
  for (const photo of photos) {
    const data = new FormData();
    data.set("projectId", projectId);
    data.set("docketId", docketId);
    data.set("takenAt", new Date(photo.lastModified || Date.now()).toISOString());
    data.set("file", new File([await shrunk(photo)], "photo"));
    const sent = await addPhotoAction(data).catch(() => ({ ok: false }));
    if (!sent.ok) failed += 1;
  }
  return failed;
}
