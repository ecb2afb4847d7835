import "server-only";
import { cutReservedInput } from "#lib/contracts/planning/reuse.ts";
import { brokenRule, notFound, ok } from "#lib/kernel/result.ts";
import { pieceFor, waitsForSaw } from "#lib/trade/gear/reserved.ts";
import { recordChange } from "../../gate/change-line.ts";
import { projectUseCase } from "../../gate/use-case.ts";
import { cutDown, findPanel } from "../panels/cut-down.ts";
import { bindReserved, listReserved } from "./reserved-store.ts";
import { settleReserved } from "./settle-reserved.ts";

/** Ticked as cut: the panel ends, the piece for the face begins where it lay, and what is left worth keeping goes on to the rack. */
export const cutReserved = projectUseCase("gear.cutReserved", "gear.move", cutReservedInput, async (scope, { reservationId, happenedAt, rests }) => {
  await recordChange(scope, { kind: "set-up", detail: { panels: "cut down" } });
  const line = (await listReserved(scope)).find(({ id }) => id === reservationId);
  if (!line) return notFound("line of the reuse plan");
  const panel = line.itemId === null ? null : await findPanel(scope, line.itemId);
  if (!panel) return brokenRule("panel-not-back-yet", { column: line.gridRef, face: line.face, after: line.after ?? "" });
  if (!waitsForSaw(line, panel)) return brokenRule("panel-cut-already", { panel: panel.name, column: line.gridRef });
  if (panel.placeKind === "column") return brokenRule("panel-on-column", { panel: panel.name, place: panel.place ?? "" });
  const cut = await cutDown(scope, panel, { pieces: [pieceFor(line, panel)], brought: 0, happenedAt, rests });
  if (!cut.ok) return cut;
  const [made] = cut.value.panels;
  if (made) await bindReserved(scope, { id: line.id, itemId: made.itemId });
  await settleReserved(scope);
  return ok({ panel: made ?? null, rests: cut.value.rests });
});
