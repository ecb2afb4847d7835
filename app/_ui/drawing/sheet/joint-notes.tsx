import type { Rect } from "#lib/trade/shutter/form-set.ts";
import { lengthFigure, type Units } from "#app/_ui/value/format-quantity.ts";
import { round1 } from "./sheet-scale.ts";
import { spread } from "./spread.ts";

export type JointNotesProps = {
  readonly ply: readonly Rect[];
  /** Where the texts begin, and the edge of the sheets their leaders come from. */
  readonly x: number;
  readonly from: number;
  readonly toY: (heightMm: number) => number;
  readonly units: Units;
};

/** Heights of the joints between sheets one above the other: the tops of sheets that have another on them. */
export function jointHeights(ply: readonly Rect[]): readonly number[] {
  const head = ply.reduce((most, { y, h }) => Math.max(most, y + h), 0);
  const tops = ply.map(({ y, h }) => Math.round((y + h) * 10) / 10).filter((top) => top < head - 0.5);
  return [...new Set(tops)].sort((a, b) => a - b);
}

export function JointNotes({ ply, x, from, toY, units }: JointNotesProps) {
  const heights = jointHeights(ply);
  const places = spread(heights.map((height) => -toY(height)), 26).map((place) => -place);
  return (
    <>
      {heights.map((height, index) => {
        const place = places[index] ?? toY(height);
        return (
          <g key={height}>
            <path d={`M${round1(from)} ${round1(toY(height))}L${round1(x)} ${round1(place)}h4`} fill="none" className="stroke-ink" strokeWidth={0.8} />
            <text x={round1(x + 7)} y={round1(place)} fontSize={11}>
              <tspan dy={-1}>joint</tspan>
              <tspan x={round1(x + 7)} dy={12}>{lengthFigure(height, units)}</tspan>
            </text>
          </g>
        );
      })}
    </>
  );
}
