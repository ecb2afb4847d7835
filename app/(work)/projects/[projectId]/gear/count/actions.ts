"use server";

import { revalidatePath } from "next/cache";
import { currentCaller } from "#lib/server/gate/session.ts";
import { addCountPhoto } from "#lib/server/gear/counts/count-photos.ts";
import { lockCount, settleCount } from "#lib/server/gear/counts/stocktake.ts";
import { textOf } from "#app/_ui/form/read-form.ts";

export async function lockCountAction(input: Parameters<typeof lockCount>[1]) {
  const locked = await lockCount(await currentCaller(), input);
  if (locked.ok) revalidatePath("/projects/[projectId]/gear", "layout");
  return locked;
}
export async function settleCountAction(input: Parameters<typeof settleCount>[1]) {
  const settled = await settleCount(await currentCaller(), input);
  if (settled.ok) revalidatePath("/projects/[projectId]/gear", "layout");
  return settled;
}
export async function addCountPhotoAction(data: FormData) {
  const file = data.get("file");
  const bytes = file instanceof File ? new Uint8Array(await file.arrayBuffer()) : new Uint8Array();
  return addCountPhoto(await currentCaller(), { projectId: textOf(data, "projectId"), countId: textOf(data, "countId"), takenAt: textOf(data, "takenAt"), file: bytes });
}
