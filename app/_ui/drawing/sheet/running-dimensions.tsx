import { FIGURE_GAP, round1 } from "./sheet-scale.ts";
import { spread } from "./spread.ts";

export type RunningMark = { readonly y: number; readonly text: string; readonly isStrong?: boolean };

export type RunningDimensionsProps = {
  /** Lowest first; the first is the datum. */
  readonly marks: readonly RunningMark[];
  /** Of the upright line, and how far the texts stand off to its left. */
  readonly x: number;
  readonly reach: number;
  readonly from: number;
  readonly to: number;
};

/** Heights counted from one datum along one line, so that a tape is read once; crowded figures are moved apart on leaders. */
export function RunningDimensions({ marks, x, reach, from, to }: RunningDimensionsProps) {
  const up = marks.map(({ y }) => -y);
  const places = spread(up, FIGURE_GAP, -to, -from).map((place) => -place);
  const foot = marks[0]?.y ?? to;
  const head = marks.at(-1)?.y ?? from;
  return (
    <g>
      <path className="dim" strokeWidth={0.9} d={`M${x} ${round1(foot)}V${round1(head)}`} />
      <circle cx={x} cy={round1(foot)} r={3} className="fill-sheet stroke-accent" strokeWidth={1.4} />
      {marks.map(({ y, text, isStrong }, index) => {
        const place = places[index] ?? y;
        return (
          <g key={`${text} ${index}`}>
            <path className="dim" strokeWidth={0.9} d={`M${x + 5} ${round1(y)}H${x - 5}L${x - reach + 6} ${round1(place)}h-4`} />
            {index > 0 ? <path className="dim" strokeWidth={1.8} d={`M${x - 3} ${round1(y) + 3}l6 -6`} /> : null}
            <text className="dim-text" x={x - reach} y={round1(place)} dy={4} textAnchor="end" fontWeight={isStrong ? 700 : 400}>{text}</text>
          </g>
        );
      })}
    </g>
  );
}
