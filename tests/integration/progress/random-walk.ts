import fc from "fast-check";
import type { EventAnswer, ProposedEventInput } from "#lib/contracts/progress.ts";
import { uuidv7From } from "#lib/kernel/ids.ts";
import { CAUSES, GATES, STAGES } from "#lib/trade/progress/stages.ts";

const SETTLING = ["withdrawn", "settled", "acknowledged"] as const;
type Step = {
  column: number; minutesAgo: number; pick: number; reason: boolean; offset: number; stands: boolean; bytes: Uint8Array;
  what: { kind: "tick"; stage: (typeof STAGES)[number] } | { kind: "back"; to: (typeof STAGES)[number] | null; cause: (typeof CAUSES)[number] }
    | { kind: "release" | "revoke"; gate: (typeof GATES)[number] } | { kind: "reading"; when: "before-pour" | "after-pour" } | { kind: "held" | "hold-lifted" } | { kind: (typeof SETTLING)[number] };
};
export type Batch = { readonly saved: boolean; readonly byOwner: boolean; readonly minutesLater: number; readonly steps: readonly Step[] };

const one = <const T>(...values: readonly T[]) => fc.constantFrom(...values);
const tick = fc.record({ kind: fc.constant("tick" as const), stage: one(...STAGES) });
const what = fc.oneof(
  { arbitrary: tick, weight: 6 },
  { arbitrary: fc.record({ kind: fc.constant("back" as const), to: one(null, ...STAGES.slice(0, 5)), cause: one(...CAUSES) }), weight: 1 },
  { arbitrary: fc.record({ kind: one("release" as const, "revoke" as const), gate: one(...GATES) }), weight: 2 },
  { arbitrary: fc.record({ kind: fc.constant("reading" as const), when: one("before-pour" as const, "after-pour" as const) }), weight: 1 },
  { arbitrary: fc.record({ kind: one("held" as const, "hold-lifted" as const) }), weight: 1 },
  { arbitrary: fc.record({ kind: one(...SETTLING) }), weight: 5 },
);
const step = (columns: number) =>
  fc.record({
    column: fc.nat(columns - 1), minutesAgo: fc.oneof(fc.constant(0), fc.integer({ min: -15, max: 2000 })), pick: fc.nat(1000), reason: fc.boolean(),
    offset: fc.integer({ min: -40, max: 40 }), stands: fc.boolean(), bytes: fc.uint8Array({ minLength: 10, maxLength: 10 }), what,
  }) as fc.Arbitrary<Step>;

/** The same batches for the same seed. */
export const someBatches = (seed: number, columns: number, count: number): Batch[] =>
  fc.sample(fc.record({ saved: fc.boolean(), byOwner: fc.boolean(), minutesLater: fc.integer({ min: 1, max: 300 }), steps: fc.array(step(columns), { minLength: 1, maxLength: 6 }) }), { seed, numRuns: count });

/** Gives a step the ids it needs; settling and the like choose among the column's own events, those that fit first. */
export function toEvent({ what: given, ...step }: Step, at: string, columnId: string, answers: readonly EventAnswer[]): ProposedEventInput {
  const happenedAt = new Date(Date.parse(at) - step.minutesAgo * 60_000).toISOString();
  const told = { id: uuidv7From(Date.parse(at), step.bytes), columnId, happenedAt, reason: step.reason ? "Said on site" : null };
  const own = answers.filter((answer) => answer.columnId === columnId && answer.outcome !== "refused" && answer.outcome !== "needs-reason");
  const fitting = own.filter(({ outcome, findings }) => (given.kind === "settled" ? outcome === "queried" : given.kind === "acknowledged" ? findings.length > 0 && outcome === "accepted" : true));
  const among = fitting.length > 0 ? fitting : own;
  const eventId = among[step.pick % Math.max(among.length, 1)]?.id ?? told.id;
  switch (given.kind) {
    case "tick": return { ...told, kind: "stage-reached", stage: given.stage };
    case "back": return { ...told, kind: "set-back", to: given.to, cause: given.cause };
    case "release": return { ...told, kind: "gate-released", gate: given.gate };
    case "revoke": return { ...told, kind: "gate-revoked", gate: given.gate };
    case "reading": return { ...told, kind: "reading", when: given.when, offsets_mm: { x: step.offset, y: -step.offset } };
    case "settled": return { ...told, kind: "settled", eventId, stands: step.stands };
    case "withdrawn": case "acknowledged": return { ...told, kind: given.kind, eventId };
    case "held": case "hold-lifted": return { ...told, kind: given.kind };
  }
}
