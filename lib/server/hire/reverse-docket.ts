import "server-only";
import { reverseInput } from "#lib/contracts/hire/terms.ts";
import { brokenRule, notFound, ok } from "#lib/kernel/result.ts";
import { holds } from "#lib/trade/hire/balance.ts";
import { takeNumbers, writeChange } from "../gate/change-line.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { reverseMovement } from "../gear/ledger/post-movements.ts";
import { docketsOf, factsOf, readBook } from "./hire-book.ts";
import { addReversal } from "./store/supplier-store.ts";

/** Takes back a mistaken docket and what it moved. What rests on it has to be taken back first. */
export const reverseDocket = projectUseCase("hire.reverseDocket", "hire.record", reverseInput, async (scope, { subjectId, reason }) => {
  const seq = await takeNumbers(scope, 1);
  const book = await readBook(scope);
  const docket = book.dockets.find(({ id }) => id === subjectId);
  if (!docket) return notFound("docket");
  if (docket.reversal) return brokenRule("reversed-already", { number: docket.number });
  const others = docketsOf(book, docket.supplierId).filter(({ id }) => id !== docket.id);
  const resting = others.find(({ answersId }) => answersId === docket.id);
  if (resting) return brokenRule("docket-answered", { number: docket.number, by: resting.number });
  if (!holds(factsOf(others))) return brokenRule("docket-needed", { number: docket.number });
  if (docket.movementId !== null) {
    const undone = await reverseMovement(scope, docket.movementId, reason);
    if (!undone.ok) return undone;
  }
  await addReversal(scope, "docket", docket.id, scope.projectId, reason);
  await writeChange(scope, seq, { kind: "set-up", detail: { hire: "reversed", number: docket.number, reason } });
  return ok({ seq });
});
