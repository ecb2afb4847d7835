import { STAGES } from "#lib/trade/progress/stages.ts";
import { ColumnSign } from "./column-sign.tsx";

const ROWS = [
  { words: "not started", done: 0, flagged: false },
  ...STAGES.map((stage, index) => ({ words: stage, done: (1 << (index + 1)) - 1, flagged: false })),
  { words: "queried or held", done: 0b11, flagged: true },
];

/** How to read the signs, for a plan or a print-out. */
export function SignLegend({ size = 36 }: { readonly size?: number }) {
  return (
    <ul aria-label="How to read the signs" className="flex flex-wrap gap-x-5 gap-y-2">
      {ROWS.map(({ words, done, flagged }) => (
        <li key={words} className="flex items-center gap-2 text-sm">
          <ColumnSign shape="rectangle" width_mm={450} depth_mm={300} done={done} flagged={flagged} size={size} />
          {words}
        </li>
      ))}
    </ul>
  );
}
