import type { Units } from "#app/_ui/value/format-quantity.ts";
import type { ReservedLine } from "#lib/server/gear/reserved/get-reserved.ts";
import { groupBy } from "#lib/kernel/group-by.ts";
import { Section } from "#app/_ui/page/section.tsx";
import { dayWords } from "#app/_ui/value/time-words.ts";
import { ReservedList } from "./reserved-list.tsx";

type Props = { readonly projectId: string; readonly lines: readonly ReservedLine[]; readonly units: Units; readonly mayCut: boolean };

/** Panels that wait for the saw, by the day their column is stood. */
export function CutDownSection({ projectId, lines, units, mayCut }: Props) {
  const waiting = lines.filter(({ standing }) => standing === "cut-down");
  if (waiting.length === 0) return null;
  const days = [...groupBy(waiting, ({ stoodOn }) => stoodOn ?? "")].sort(([a], [b]) => (a || "9").localeCompare(b || "9"));
  return (
    <Section title="Panels to cut down" note="Spoken for by the reuse plan; tick one once it is cut">
      {days.map(([day, own]) => (
        <div key={day} className="border-2 border-ink bg-sheet px-4 py-2">
          <p className="lettering">{day === "" ? "No day planned yet" : `For ${dayWords(day)}`}</p>
          <ReservedList projectId={projectId} lines={own} units={units} mayCut={mayCut} withColumn />
        </div>
      ))}
    </Section>
  );
}
