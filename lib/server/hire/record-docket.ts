import "server-only";
import { countDocketInput, recordDocketInput, type CountDocket, type RecordDocket } from "#lib/contracts/hire/dockets.ts";
import { brokenRule, notFound, ok, type Result } from "#lib/kernel/result.ts";
import { toDay } from "#lib/kernel/days.ts";
import { judgeDocket } from "#lib/trade/hire/judge-docket.ts";
import { takeNumbers, writeChange } from "../gate/change-line.ts";
import type { ProjectScope } from "../gate/scope.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { newId } from "../platform/new-id.ts";
import { docketsOf, factsOf, itemName, readBook, termsOf, type HireBook } from "./hire-book.ts";
import { moveDocket } from "./move-docket.ts";
import { addDocket, type Docket, type DocketLine } from "./store/docket-store.ts";

type Given = CountDocket | RecordDocket;

/** Which kind of docket each one answers. */
const ANSWERS: Partial<Record<Given["kind"], Docket["kind"]>> = { "delivery": "order", "return": "off-hire", "yard-count": "return", "settlement": "missing" };

const answersOf = (given: Given): string | null =>
  "orderId" in given ? given.orderId : "callId" in given ? given.callId : "answersId" in given ? given.answersId : null;

const plain = (lines: readonly (Partial<DocketLine> & Pick<DocketLine, "itemId" | "quantity">)[]): DocketLine[] =>
  lines.map(({ itemId, quantity, short = 0, damaged = 0, dirty = 0 }) => ({ itemId, quantity, short, damaged, dirty }));

function linesOf(given: Given, answered: Docket | undefined): DocketLine[] {
  if ("lines" in given) return plain(given.lines);
  if (given.kind === "settlement") return plain(answered?.lines ?? []);
  return given.kind === "stand-down" && given.itemId !== null ? plain([{ itemId: given.itemId, quantity: 0 }]) : [];
}

/** A supplier whose terms are in another currency is not hired from on this project. */
function foreignCurrency(book: HireBook, supplierId: string): Result<never> | null {
  const terms = termsOf(book, supplierId).find(({ currency }) => currency !== book.project.currency);
  return terms ? brokenRule("hire-foreign-currency", { currency: terms.currency, project: book.project.currency }) : null;
}

async function write(scope: ProjectScope, given: Given): Promise<Result<{ docketId: string; seq: number }>> {
  // The project's row lock keeps two from sending the same pieces back.
  const seq = await takeNumbers(scope, 1);
  const book = await readBook(scope);
  const supplier = book.suppliers.find(({ id, isRetired }) => id === given.supplierId && !isRetired);
  if (!supplier) return notFound("supplier");
  const foreign = foreignCurrency(book, supplier.id);
  if (foreign) return foreign;
  const dockets = docketsOf(book, supplier.id);
  const answersId = answersOf(given);
  const answered = dockets.find(({ id }) => id === answersId);
  const wanted = ANSWERS[given.kind];
  if (answersId !== null && (!answered || (wanted !== undefined && answered.kind !== wanted))) return notFound("docket");
  if (given.kind === "settlement" && dockets.some(({ kind, answersId: answers }) => kind === "settlement" && answers === answersId)) return brokenRule("settled-already", { number: answered?.number ?? "" });
  if (given.kind === "stand-down" && !grantsStandDown(book, supplier.id, given.on)) return brokenRule("no-stand-down", { supplier: supplier.name });
  const lines = linesOf(given, answered);
  if (lines.some(({ itemId }) => !book.items.some(({ id }) => id === itemId))) return notFound("gear item");
  const fault = judgeDocket(
    { kind: given.kind, number: given.number, on: toDay(given.on), lines, answers: answered && given.kind !== "credit" ? answered : null },
    {
      today: book.today, facts: factsOf(dockets), itemName: (id) => itemName(book, id),
      numbers: dockets.filter(({ kind }) => kind === given.kind).map(({ number }) => number),
    },
  );
  if (fault) return brokenRule(fault.code, fault.values);
  const moved = await moveDocket(scope, { kind: given.kind, happenedAt: given.happenedAt, lines }, supplier.placeId);
  if (!moved.ok) return moved;
  const docketId = newId();
  await addDocket(scope, {
    id: docketId, supplierId: supplier.id, kind: given.kind, number: given.number, on: given.on, happenedAt: given.happenedAt, name: given.name, note: given.note,
    lines, answersId, movementId: moved.value, ...extrasOf(given),
  });
  await writeChange(scope, seq, { kind: "set-up", detail: { hire: given.kind, number: given.number, supplier: supplier.name } });
  return ok({ docketId, seq });
}

const extrasOf = (given: Given) => ({
  bySupplier: "bySupplier" in given && given.bySupplier, dispatchedOn: "dispatchedOn" in given ? given.dispatchedOn : null,
  until: given.kind === "stand-down" ? given.until : null, share: given.kind === "stand-down" ? given.share : null,
  amount: given.kind === "credit" ? given.amount : null,
});

function grantsStandDown(book: HireBook, supplierId: string, on: string): boolean {
  const inForce = termsOf(book, supplierId).filter(({ validFrom }) => validFrom <= on).sort((a, b) => (a.validFrom < b.validFrom ? 1 : -1))[0];
  return inForce !== undefined && inForce.standDownShare !== null;
}

/** A delivery or a return, counted at the gate by whoever stands there. */
export const countDocket = projectUseCase("hire.countDocket", "hire.count", countDocketInput, write);

/** Orders, off-hire calls, yard counts, losses, stand-downs and credits: the papers of the office. */
export const recordDocket = projectUseCase("hire.recordDocket", "hire.record", recordDocketInput, write);
