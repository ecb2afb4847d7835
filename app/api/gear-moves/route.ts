import { currentCaller } from "#lib/server/gate/session.ts";
import { reverseMovement } from "#lib/server/gear/move-gear.ts";
import { gatherLines } from "#lib/server/gear/pages/gather-lines.ts";
import { answerFailure } from "../answer-failure.ts";
import { readJson } from "../read-json.ts";

type Entry = { readonly kind?: unknown; readonly id?: unknown };

/** Takes what a phone kept of gathering, one entry at a time: gear that was taken along, or a movement taken back. */
export async function POST(request: Request): Promise<Response> {
  const read = await readJson(request);
  if ("unread" in read) return read.unread;
  const { entry, ...sender } = (read.given ?? {}) as { entry?: Entry };
  const { kind, id, ...rest } = entry ?? {};
  const caller = await currentCaller();
  if (kind === "taken-back") {
    const result = await reverseMovement(caller, { ...rest, ...sender, reversalId: id } as Parameters<typeof reverseMovement>[1]);
    return result.ok ? Response.json({ movementId: id }) : answerFailure(result.failure);
  }
  const result = await gatherLines(caller, { ...rest, ...sender, movementId: id } as Parameters<typeof gatherLines>[1]);
  return result.ok ? Response.json(result.value) : answerFailure(result.failure);
}
