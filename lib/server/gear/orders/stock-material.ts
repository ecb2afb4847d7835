import "server-only";
import { cutUpInput, materialKey, takeInMaterialInput } from "#lib/contracts/planning/orders.ts";
import { brokenRule, notFound } from "#lib/kernel/result.ts";
import { transfer } from "#lib/trade/gear/ledger.ts";
import { projectUseCase } from "../../gate/use-case.ts";
import { projectHead } from "../../projects/project-head.ts";
import { readProject } from "../../projects/store.ts";
import { projectPlaces } from "../ledger/place-store.ts";
import { postMovements } from "../ledger/post-movements.ts";
import { listMaterials } from "./material-store.ts";
import { itemsOf } from "./materials.ts";

const LIES_AT = ["yard", "rack", "truck", "cleaning bay"];

/** Sheets and lengths that were there before anything was ordered here. */
export const takeInMaterial = projectUseCase("gear.takeInMaterial", "gear.move", takeInMaterialInput, async (scope, { placeId, lines }) => {
  const { units } = projectHead(await readProject(scope));
  const places = await projectPlaces(scope);
  const source = places.find(({ kind }) => kind === "bought");
  const place = places.find(({ id, kind }) => (placeId === null ? kind === "yard" : id === placeId && LIES_AT.includes(kind)));
  if (!source || !place) return notFound("place");
  const items = await itemsOf(scope, lines, units);
  const moved = lines.flatMap(({ quantity, ...material }) => transfer(items.get(materialKey(material))?.itemId ?? "", source.id, place.id, quantity));
  return postMovements(scope, [{ kind: "opening", projectId: scope.projectId, happenedAt: scope.now, lines: moved }]);
});

/** Sheets and lengths that were cut: they leave the ledger the way they came in; the panels made of them come in by themselves. */
export const cutUpMaterial = projectUseCase("gear.cutUpMaterial", "gear.move", cutUpInput, async (scope, { placeId, happenedAt, lines, reason }) => {
  const places = await projectPlaces(scope);
  const source = places.find(({ kind }) => kind === "bought");
  if (!source || !places.some(({ id, kind }) => id === placeId && LIES_AT.includes(kind))) return notFound("place");
  const known = new Set((await listMaterials(scope)).map(({ itemId }) => itemId));
  if (lines.some(({ itemId }) => !known.has(itemId))) return brokenRule("cut-up-no-material");
  return postMovements(scope, [{ kind: "cut up", projectId: scope.projectId, happenedAt, reason, lines: lines.flatMap(({ itemId, quantity }) => transfer(itemId, placeId, source.id, quantity)) }]);
});
