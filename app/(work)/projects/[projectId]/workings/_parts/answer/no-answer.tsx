import type { Failure } from "#lib/kernel/result.ts";
import { ENGINEERING_LIMIT } from "#lib/contracts/workings/answer-parts.ts";
import type { Refusal } from "#lib/trade/engineering/working.ts";
import { FailureNotice } from "#app/_ui/message/failure-notice.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import { RefusalRows } from "#app/_ui/message/refusal-rows.tsx";
import { remedyOf } from "#app/_ui/value/refusal-words.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";

/** The limit that was not kept, out of the failure that carries it. */
export function refusalOf(failure: Failure): Refusal | null {
  if (failure.kind !== "rule" || failure.code !== ENGINEERING_LIMIT) return null;
  const { limit, given, allowed, source, message } = failure.values;
  return { limit: String(limit), given: given ?? "", allowed: String(allowed), source: String(source), message: String(message) };
}

/** Why there is no answer: the limit, what was given, what would be allowed and what to do. Never a number instead. */
export function NoAnswer({ failure, units }: { readonly failure: Failure; readonly units: Units }) {
  const refusal = refusalOf(failure);
  if (failure.kind === "invalid") {
    return (
      <Notice kind="problem" title="No answer: some entries cannot be used.">
        <ul className="list-disc pl-5">{failure.problems.map(({ field, message }) => <li key={`${field} ${message}`}>{message}</li>)}</ul>
      </Notice>
    );
  }
  if (refusal === null) return <FailureNotice failure={failure} />;
  return (
    <Notice kind="problem" title={`No answer: ${refusal.limit} is outside what the method covers.`}>
      <p>{remedyOf(refusal)}</p>
      <RefusalRows refusal={refusal} units={units} />
    </Notice>
  );
}
