import { memo } from "react";
import { signParts } from "#app/_ui/drawing/sign/sign-parts.ts";
import { SignPaths } from "#app/_ui/drawing/sign/sign-paths.tsx";
import { signWords } from "#app/_ui/drawing/sign/sign-words.ts";
import type { PlanColumn } from "./plan-model.ts";

export type PlanMarkProps = {
  readonly column: PlanColumn;
  /** Pixels for one millimetre. */
  readonly scale: number;
  /** Its longer side is never drawn smaller than this, in pixels. */
  readonly least: number;
  readonly isNamed: boolean;
  readonly isSelected: boolean;
  readonly isInTabOrder: boolean;
  readonly id: string;
};

const LEAST_SHORT_SHARE = 0.3;

/** A column to scale, or as small as can still be read, in the state it is in. */
function markOf(column: PlanColumn, scale: number, least: number) {
  const depth = column.shape === "circle" ? column.width_mm : column.depth_mm;
  const grown = Math.max(scale, least / Math.max(column.width_mm, depth, 1));
  const w = Math.max(column.width_mm * grown, least * LEAST_SHORT_SHARE);
  const h = Math.max(depth * grown, least * LEAST_SHORT_SHARE);
  const t = Math.min(Math.max(Math.max(w, h) * 0.11, least * 0.13), 7);
  return { w, h, t, parts: signParts({ shape: column.shape, w, h, t, done: column.done, flagged: column.flagged }) };
}

export const PlanMark = memo(function PlanMark({ column, scale, least, isNamed, isSelected, isInTabOrder, id }: PlanMarkProps) {
  const { w, h, t, parts } = markOf(column, scale, least);
  const turn = column.rotation_deg ? { transform: `rotate(${-column.rotation_deg})` } : {};
  const reach = Math.max(w, h) / 2 + t * 3 + 2;
  return (
    <g
      id={id}
      role="option"
      aria-selected={isSelected}
      aria-label={`${column.name}, ${signWords(column.done, column.flagged)}`}
      tabIndex={isInTabOrder ? 0 : -1}
      data-column={column.id}
      className={`group cursor-pointer outline-none ${column.isFaint ? "opacity-30" : ""}`}
    >
      <rect
        x={-reach} y={-reach} width={2 * reach} height={2 * reach}
        className={`group-focus-visible:stroke-accent group-focus-visible:stroke-[4px] ${isSelected ? "fill-accent-wash stroke-accent" : "fill-transparent stroke-transparent"}`}
        strokeWidth={2}
      />
      <g {...turn}><SignPaths parts={parts} /></g>
      {isSelected ? <Tick x={-reach} y={-reach} /> : null}
      {isNamed ? (
        <text y={reach + 11} textAnchor="middle" fontSize={12} fontWeight={isSelected ? 700 : 500} stroke="var(--color-sheet)" strokeWidth={3} paintOrder="stroke">
          {column.name}
        </text>
      ) : null}
    </g>
  );
});

function Tick({ x, y }: { readonly x: number; readonly y: number }) {
  return (
    <g transform={`translate(${x} ${y})`}>
      <circle r={8} className="fill-accent" />
      <path d="M-4 0l3 3.5l5 -7" fill="none" className="stroke-white" strokeWidth={2.4} />
    </g>
  );
}
