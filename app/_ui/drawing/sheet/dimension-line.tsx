export type DimensionLineProps = {
  readonly along: "across" | "up";
  /** Ends along the line, and where the line lies, in pixels. */
  readonly from: number;
  readonly to: number;
  readonly at: number;
  /** Where the witness lines begin: near what is measured. */
  readonly witness?: number;
  readonly text: string;
};

const TICK = 4;
/** Roughly, of a figure at 12 px. */
const CHARACTER = 7;

/** How far a text that does not fit its line stands out beyond the line's end, in pixels. */
export const standsOut = (length: number, text: string): number =>
  length > text.length * CHARACTER + 6 ? 0 : 10 + text.length * CHARACTER;

/** A dimension line with its text on the line, or beside it where the line is too short. */
export function DimensionLine({ along, from, to, at, witness, text }: DimensionLineProps) {
  // A line that goes up is drawn across and turned a quarter, so that its text reads from the right-hand edge of the sheet.
  const ends = along === "up" ? [-from, -to] : [from, to];
  const a = Math.min(...ends);
  const b = Math.max(...ends);
  const fits = standsOut(b - a, text) === 0;
  const middle = (a + b) / 2;
  const over = witness === undefined ? at : at + Math.sign(at - witness) * 4;
  const ticks = [a, b].map((end) => `M${n(end - TICK)} ${n(at + TICK)}l${2 * TICK} ${-2 * TICK}`).join("");
  const witnesses = witness === undefined ? "" : [a, b].map((end) => `M${n(end)} ${n(witness)}V${n(over)}`).join("");
  return (
    <g transform={along === "up" ? "rotate(-90)" : undefined}>
      <path className="dim" strokeWidth={0.9} d={`M${n(a)} ${n(at)}H${n(b)}${witnesses}`} />
      <path className="dim" strokeWidth={1.8} d={ticks} />
      <text className="dim-text" x={n(fits ? middle : b + 8)} y={n(fits ? at : at + 4)} dy={fits ? -4 : 0} textAnchor={fits ? "middle" : "start"}>{text}</text>
    </g>
  );
}

const n = (value: number): number => Math.round(value * 10) / 10;
