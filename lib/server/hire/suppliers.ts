import "server-only";
import { addTermsInput, retireSupplierInput, reverseInput, saveSupplierInput } from "#lib/contracts/hire/terms.ts";
import { toDay } from "#lib/kernel/days.ts";
import { brokenRule, invalid, notFound, ok } from "#lib/kernel/result.ts";
import { missingRate } from "#lib/trade/hire/terms/ladder.ts";
import { clashWith } from "#lib/trade/hire/terms/terms-in-force.ts";
import { recordChange } from "../gate/change-line.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { addClampItems } from "../gear/ledger/item-store.ts";
import { writePlace } from "../gear/ledger/place-store.ts";
import { clashOf } from "../platform/db.ts";
import { newId } from "../platform/new-id.ts";
import { readBook, termsOf } from "./hire-book.ts";
import { addReversal, addSupplier, addTermsRows, changeSupplier, findSupplier } from "./store/supplier-store.ts";

/** Adds a supplier with a place in the gear ledger, or changes how one is reached. */
export const saveSupplier = projectUseCase("hire.saveSupplier", "hire.settle", saveSupplierInput, async (scope, { supplierId, name, contact, phone, email }) => {
  try {
    if (supplierId !== undefined) return (await changeSupplier(scope, supplierId, { name, contact, phone, email })) ? ok({ supplierId }) : notFound("supplier");
    await addClampItems(scope);
    const placeId = await writePlace(scope, undefined, { kind: "supplier", name, projectId: null });
    if (placeId === null) throw new Error("A new place was not written.");
    const id = newId();
    await addSupplier(scope, id, placeId, { name, contact, phone, email });
    await recordChange(scope, { kind: "set-up", detail: { hire: "supplier", name } });
    return ok({ supplierId: id });
  } catch (error) {
    if (clashOf(error) === "duplicate") return brokenRule("supplier-known", { name });
    throw error;
  }
});

export const retireSupplier = projectUseCase("hire.retireSupplier", "hire.settle", retireSupplierInput, async (scope, { supplierId }) =>
  (await changeSupplier(scope, supplierId, { retiredAt: scope.now })) ? ok(null) : notFound("supplier"));

/** A new version of a supplier's terms. It never reaches back over days that earlier terms hold for. */
export const addTerms = projectUseCase("hire.addTerms", "hire.settle", addTermsInput, async (scope, { supplierId, validFrom, currency, rule, rates }) => {
  const supplier = await findSupplier(scope, supplierId);
  if (!supplier) return notFound("supplier");
  const book = await readBook(scope);
  if (currency !== book.project.currency) return brokenRule("hire-foreign-currency", { currency, project: book.project.currency });
  if (new Set(rates.map(({ itemId }) => itemId)).size < rates.length) return invalid({ field: "rates", message: "An item has two rates; keep one." });
  if (rates.some(({ itemId }) => !book.items.some(({ id }) => id === itemId))) return notFound("gear item");
  const lacking = rates.findIndex((rate) => missingRate(rule.ladder, rate) !== null);
  const lacked = rates[lacking];
  if (lacked) return invalid({ field: `rates.${lacking}`, message: `The rates rest on a ${missingRate(rule.ladder, lacked)} rate; row ${lacking + 1} has none.` });
  const clash = clashWith(termsOf(book, supplierId), toDay(validFrom));
  if (clash) return brokenRule("terms-overlap", { validFrom: clash.validFrom, latest: clash.latest });
  const id = newId();
  await addTermsRows(scope, { id, supplierId, validFrom, currency, rule, rates });
  await recordChange(scope, { kind: "set-up", detail: { hire: "terms", supplier: supplier.name, validFrom } });
  return ok({ termsId: id });
});

/** Takes back the latest version; the one before it holds again. */
export const reverseTerms = projectUseCase("hire.reverseTerms", "hire.settle", reverseInput, async (scope, { subjectId, reason }) => {
  const book = await readBook(scope);
  const terms = book.terms.find(({ id }) => id === subjectId);
  if (!terms) return notFound("terms");
  if (terms.reversal) return brokenRule("reversed-already", { number: `the terms from ${terms.validFrom}` });
  const later = termsOf(book, terms.supplierId).find(({ validFrom }) => validFrom > terms.validFrom);
  if (later) return brokenRule("terms-not-latest", { validFrom: terms.validFrom, latest: later.validFrom });
  await addReversal(scope, "terms", terms.id, null, reason);
  return ok({ seq: await recordChange(scope, { kind: "set-up", detail: { hire: "terms reversed", validFrom: terms.validFrom, reason } }) });
});
