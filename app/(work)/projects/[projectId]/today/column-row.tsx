"use client";

import { Link } from "#app/_ui/control/link.tsx";
import { ColumnSign } from "#app/_ui/drawing/sign/column-sign.tsx";
import { signWords } from "#app/_ui/drawing/sign/sign-words.ts";
import { sectionText, type Units } from "#app/_ui/value/format-quantity.ts";
import type { TodayRow } from "./group-columns.ts";

export type ColumnRowProps = {
  readonly row: TodayRow;
  /** What stands in its way. */
  readonly words: readonly string[];
  readonly units: Units;
  readonly href: string;
  readonly isSelected: boolean;
  readonly onToggle: () => void;
};

/** One column: press it to select it, or open its page. */
export function ColumnRow({ row, words, units, href, isSelected, onToggle }: ColumnRowProps) {
  const { gridRef, level, mark, shape, widthMm, depthMm, done, flagged, isAhead } = row;
  return (
    <li className={`flex border-2 ${isSelected ? "border-accent bg-accent-wash" : "border-edge bg-sheet"}`}>
      <button
        type="button" aria-pressed={isSelected} onClick={onToggle}
        className="flex min-h-16 min-w-0 grow cursor-pointer items-center gap-3 px-2 py-1 text-left hover:bg-accent-wash"
      >
        <span aria-hidden className="grid size-6 shrink-0 place-items-center border-2 border-ink bg-sheet">
          {isSelected ? <svg viewBox="0 0 20 20" className="size-5 stroke-accent" strokeWidth={3.5} fill="none"><path d="M3 10.5L8 16L17 3.5" /></svg> : null}
        </span>
        <ColumnSign shape={shape} width_mm={widthMm} depth_mm={depthMm} done={done} flagged={flagged} size={44} />
        <span className="min-w-0 grow leading-tight">
          <span className="block text-lg font-semibold">{gridRef}<span className="sr-only">, {level}, {signWords(done, flagged)}</span></span>
          <span className="block text-sm text-ink-soft">{mark}, {sectionText(shape, widthMm, depthMm, units)}</span>
          {words.map((each) => <span key={each} className="block text-sm font-semibold">{each}</span>)}
          {isAhead ? <span className="block text-sm font-semibold text-accent">saved on this phone</span> : null}
        </span>
      </button>
      <Link
        href={href} prefetch={false} aria-label={`Open ${gridRef}, ${level}`}
        className="no-print flex w-14 shrink-0 items-center justify-center border-l border-rule-soft text-sm font-semibold text-accent no-underline hover:bg-accent-wash"
      >
        Open
      </Link>
    </li>
  );
}
