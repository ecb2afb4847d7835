import { STAGES, stageOf } from "#lib/trade/progress/stages.ts";
import { ColumnSign } from "#app/_ui/drawing/sign/column-sign.tsx";

/** So many columns with these stages done; `flagged` of them are queried or held. */
export type DoneCount = { readonly done: number; readonly count: number; readonly flagged: number };

const FURTHEST = [null, ...STAGES] as const;

/** How many columns stand at which stage, each with the sign of that stage. */
export function StageCounts({ counts }: { readonly counts: readonly DoneCount[] }) {
  const flagged = counts.reduce((sum, row) => sum + row.flagged, 0);
  const rows = FURTHEST.map((stage, index) => ({
    words: stage ?? "not started",
    done: 2 ** index - 1,
    count: counts.filter((row) => stageOf(row.done) === stage).reduce((sum, row) => sum + row.count, 0),
  }));
  return (
    <ul className="grid grid-cols-2 gap-px bg-rule-soft sm:grid-cols-4 lg:grid-cols-8">
      {rows.map(({ words, done, count }) => (
        <li key={words} className={`flex items-center gap-2 bg-sheet px-3 py-2 ${count === 0 ? "text-ink-soft" : ""}`}>
          <ColumnSign shape="rectangle" width_mm={450} depth_mm={350} done={done} flagged={false} size={32} />
          <span><span className="block text-lg font-semibold leading-tight">{count}</span><span className="block text-sm">{words}</span></span>
        </li>
      ))}
      <li className={`flex items-center gap-2 bg-sheet px-3 py-2 ${flagged === 0 ? "text-ink-soft" : "text-flag-deep"}`}>
        {flagged > 0 ? <ColumnSign shape="rectangle" width_mm={450} depth_mm={350} done={0b11} flagged size={32} /> : null}
        <span><span className="block text-lg font-semibold leading-tight">{flagged}</span><span className="block text-sm">queried or held</span></span>
      </li>
    </ul>
  );
}
