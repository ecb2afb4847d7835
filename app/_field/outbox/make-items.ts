import type { RecordAnswer } from "#lib/contracts/progress.ts";
import type { Draft, KeptEntry, MoveDraft, NewItem } from "./kept-item.ts";

type Maker = { readonly projectId: string; readonly personId: string; readonly personName: string };

/** Drafts made whole: each with its own id, in order, and the time it happened. */
export function makeItems(drafts: readonly (Draft | MoveDraft)[], maker: Maker, now: () => number, newId: (at: number) => string): NewItem[] {
  return drafts.map(({ about = "", happenedAt, reason = null, ...fact }) => {
    const madeAt = now();
    const id = newId(madeAt);
    const event: KeptEntry = { ...fact, id, reason, happenedAt: happenedAt ?? new Date(madeAt).toISOString() };
    return {
      ...maker, event, about, madeAt, standing: "waiting", tries: 0, stumbles: 0, outcome: null, findings: [], failure: null, answeredAt: null,
    };
  });
}

/** One answer over several messages: only what concerns the given ids, columns as they were last told. */
export function mergeAnswers(answers: readonly RecordAnswer[], ids: readonly string[]): RecordAnswer {
  const wanted = new Set(ids);
  const messages = [...new Set(answers)].sort((left, right) => left.seq - right.seq);
  const byId = new Map(messages.flatMap((message) => message.answers.map((each) => [each.id, each] as const)));
  const columns = new Map(messages.flatMap((message) => message.columns.map((column) => [column.id, column] as const)));
  return {
    seq: messages.at(-1)?.seq ?? 0,
    answers: [...wanted].flatMap((id) => byId.get(id) ?? []),
    columns: [...columns.values()],
  };
}
