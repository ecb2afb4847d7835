import { Drawing } from "../../sheet/drawing.tsx";
import { RunningDimensions } from "../../sheet/running-dimensions.tsx";
import { round1 } from "../../sheet/sheet-scale.ts";
import { lengthFigure, quantityText, type Units } from "#app/_ui/value/format-quantity.ts";
import { beamLine, type BeamLine, type BeamSample } from "./beam-numbers.ts";
import { linear, pathThrough, type Scale } from "../scale.ts";

export type BackingLinesProps = {
  readonly lengthMm: number;
  /** Straight lines of load between them, from the foot. */
  readonly load: readonly { readonly at_mm: number; readonly load_kN_per_m: number }[];
  readonly reactions: readonly { readonly at_mm: number; readonly force_kN: number }[];
  readonly samples: readonly BeamSample[];
  readonly units: Units;
};

const WIDTH = 760;
const HEIGHT = 520;
const FRAME = { top: 40, foot: 470 };
const LOAD = { left: 132, right: 226 };
const REACTIONS = { left: 240, right: 330 };
const STRIPS = { shear: [350, 470], moment: [490, 610], deflection: [630, 750] } as const;

/** One timber upright as it stands: its load, the clamps that hold it, and its shear, moment and deflection at one scale of height. */
export function BackingLines({ lengthMm, load, reactions, samples, units }: BackingLinesProps) {
  const toY = linear(0, lengthMm, FRAME.foot, FRAME.top);
  const lines = [
    { name: "Shear", line: beamLine(samples, ({ shear_kN }) => shear_kN, toY, ...STRIPS.shear), text: (value: number) => quantityText(value, "kN", units) },
    { name: "Moment", line: beamLine(samples, ({ moment_kN_m }) => moment_kN_m, toY, ...STRIPS.moment), text: (value: number) => quantityText(value, "kN.m", units) },
    { name: "Deflection", line: beamLine(samples, ({ deflection_mm }) => deflection_mm, toY, ...STRIPS.deflection), text: (value: number) => (units === "us" ? `${(value / 25.4).toFixed(3)} in` : `${value.toFixed(2)} mm`) },
  ];
  const words = lines.map(({ name, line, text }) => `largest ${name.toLowerCase()} ${text(line.peak.value)} at ${lengthFigure(Math.round(line.peak.atMm), units)}`);
  return (
    <Drawing title="Backing timber with its load, reactions, shear, moment and deflection" description={`Clamps: ${reactions.map(({ at_mm, force_kN }) => `${lengthFigure(at_mm, units)}: ${quantityText(force_kN, "kN", units)}`).join(", ")}. ${words.join("; ")}.`} width={WIDTH} height={HEIGHT}>
      <RunningDimensions
        marks={[{ y: toY(0), text: "0" }, ...reactions.map(({ at_mm }) => ({ y: toY(at_mm), text: lengthFigure(at_mm, units) })), { y: toY(lengthMm), text: lengthFigure(lengthMm, units), isStrong: true }]}
        x={108} reach={20} from={20} to={HEIGHT - 34}
      />
      <Load load={load} toY={toY} units={units} />
      <rect x={LOAD.right} y={FRAME.top} width={10} height={FRAME.foot - FRAME.top} className="fill-ply stroke-ink" strokeWidth={1.2} />
      {reactions.map(({ at_mm, force_kN }) => <Reaction key={at_mm} y={toY(at_mm)} text={quantityText(force_kN, "kN", units)} isIdle={force_kN < 1e-6} />)}
      {lines.map(({ name, line, text }) => <Line key={name} name={name} line={line} text={text(line.peak.value)} />)}
      <text x={(LOAD.left + LOAD.right) / 2} y={HEIGHT - 10} textAnchor="middle" fontWeight={600}>Load</text>
      <text x={(REACTIONS.left + REACTIONS.right) / 2} y={HEIGHT - 10} textAnchor="middle" fontWeight={600}>Clamps</text>
    </Drawing>
  );
}

function Load({ load, toY, units }: Pick<BackingLinesProps, "load" | "units"> & { readonly toY: Scale }) {
  const most = Math.max(...load.map(({ load_kN_per_m }) => load_kN_per_m), 1e-9);
  const toX = linear(0, most, LOAD.right, LOAD.left);
  const points = load.map(({ at_mm, load_kN_per_m }) => ({ x: toX(load_kN_per_m), y: toY(at_mm) }));
  const top = points.at(-1);
  const largest = load.find(({ load_kN_per_m }) => load_kN_per_m === most);
  return (
    <g>
      <path d={`M${LOAD.right} ${round1(points[0]?.y ?? FRAME.foot)}${pathThrough(points).replace("M", "L")}L${LOAD.right} ${round1(top?.y ?? FRAME.top)}z`} className="fill-accent-wash stroke-ink" strokeWidth={1.2} />
      {largest ? <text x={LOAD.left} y={FRAME.foot + 16} fontWeight={600}>{quantityText(largest.load_kN_per_m, "kN/m", units)}</text> : null}
    </g>
  );
}

function Reaction({ y, text, isIdle }: { readonly y: number; readonly text: string; readonly isIdle: boolean }) {
  return (
    <g>
      <path d={`M${REACTIONS.left + 42} ${round1(y)}H${REACTIONS.left + 1}m8 -4l-8 4l8 4`} fill="none" className="stroke-accent" strokeWidth={1.8} strokeDasharray={isIdle ? "3 3" : undefined} />
      <text x={REACTIONS.left + 46} y={round1(y) + 4} fontSize={11.5} fontWeight={600}>{text}</text>
    </g>
  );
}

function Line({ name, line: { points, zero, peak }, text }: { readonly name: string; readonly line: BeamLine; readonly text: string }) {
  const isRight = peak.x >= zero;
  return (
    <g>
      <path d={`${pathThrough(points)}L${round1(zero)} ${FRAME.top}L${round1(zero)} ${FRAME.foot}z`} className="fill-accent-wash stroke-ink" strokeWidth={1.1} />
      <path d={`M${round1(zero)} ${FRAME.top}V${FRAME.foot}`} className="stroke-ink" strokeWidth={1.4} fill="none" />
      <circle cx={round1(peak.x)} cy={round1(peak.y)} r={3} className="fill-accent" />
      <text className="dim-text" x={round1(peak.x)} y={round1(peak.y) - 7} textAnchor={isRight ? "end" : "start"} fontWeight={700}>{text}</text>
      <text x={round1(zero)} y={HEIGHT - 10} textAnchor="middle" fontWeight={600}>{name}</text>
    </g>
  );
}
