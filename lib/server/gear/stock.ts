import "server-only";
import { gearInput, openStockInput, saveItemInput, savePlaceInput } from "#lib/contracts/gear.ts";
import { brokenRule, notFound, ok } from "#lib/kernel/result.ts";
import { transfer } from "#lib/trade/gear/ledger.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { clashOf } from "../platform/db.ts";
import { readProject } from "../projects/store.ts";
import { addClampItems, hasClampKind, listCountedItems, writeItem } from "./ledger/item-store.ts";
import { projectPlaces, writePlace } from "./ledger/place-store.ts";
import { postMovements } from "./ledger/post-movements.ts";

/** What can be counted here, and where it can be; makes the usual items and places the first time. */
export const prepareGear = projectUseCase("gear.prepareGear", "gear.move", gearInput.pick({ projectId: true }), async (scope) => {
  await addClampItems(scope);
  return ok({ items: await listCountedItems(scope), places: await projectPlaces(scope) });
});

/** What was there before the ledger began: bought gear, taken in at one place. Hired gear comes in by its delivery. */
export const openStock = projectUseCase("gear.openStock", "gear.move", openStockInput, async (scope, { happenedAt, placeId, lines, reason }) => {
  const places = await projectPlaces(scope);
  const source = places.find(({ kind }) => kind === "bought");
  if (!source) throw new Error("A company without a source of its own stock.");
  if (!places.some(({ id, kind }) => id === placeId && kind !== "bought" && kind !== "supplier")) return notFound("place");
  return postMovements(scope, [{
    kind: "opening", projectId: scope.projectId, happenedAt, reason, lines: lines.flatMap(({ itemId, quantity }) => transfer(itemId, source.id, placeId, quantity)),
  }]);
});

export const saveItem = projectUseCase("gear.saveItem", "gear.settle", saveItemInput, async (scope, input) => {
  const { itemId, family, name, clampKindId, barsEach, wedgesEach, lossPrice } = input;
  if (clampKindId !== null && !(await hasClampKind(scope, clampKindId))) return notFound("clamp kind");
  const isSet = family === "clamp set";
  const currency = lossPrice === null ? null : (await readProject(scope)).currency;
  try {
    const id = await writeItem(scope, itemId, {
      family, name, clampKindId: isSet || family === "clamp bar" ? clampKindId : null, barsEach: isSet ? barsEach : null, wedgesEach: isSet ? wedgesEach : null, lossPrice, currency,
    });
    return id === null ? notFound("gear item") : ok({ id });
  } catch (error) {
    if (clashOf(error) === "duplicate") return brokenRule("gear-item-known", { name });
    throw error;
  }
});

export const savePlace = projectUseCase("gear.savePlace", "gear.move", savePlaceInput, async (scope, { placeId, kind, name }) => {
  try {
    const id = await writePlace(scope, placeId, { kind, name, projectId: kind === "yard" ? null : scope.projectId });
    return id === null ? notFound("place") : ok({ id });
  } catch (error) {
    if (clashOf(error) === "duplicate") return brokenRule("gear-place-known", { name });
    throw error;
  }
});
