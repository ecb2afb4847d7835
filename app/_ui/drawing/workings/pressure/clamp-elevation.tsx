import { Drawing } from "../../sheet/drawing.tsx";
import { RunningDimensions } from "../../sheet/running-dimensions.tsx";
import { round1 } from "../../sheet/sheet-scale.ts";
import { spread } from "../../sheet/spread.ts";
import { lengthFigure, quantityText, type Units } from "#app/_ui/value/format-quantity.ts";
import { percent } from "#app/_ui/value/working-words.ts";
import { elevationNumbers, shadeOf, type ElevationGiven, type ElevationNumbers } from "./clamp-elevation-numbers.ts";
import type { PressureCorner } from "./envelope-numbers.ts";
import { linear, pathThrough } from "../scale.ts";

export type ClampElevationProps = ElevationGiven & {
  readonly units: Units;
  readonly points: readonly PressureCorner[];
  readonly pourHeightMm: number;
  /** Where the backing timber works hardest. */
  readonly backing: readonly { readonly what: string; readonly at_mm: number; readonly utilisation: number }[];
  /** A clamp that is left out, drawn dashed. */
  readonly withoutMm?: number;
};

const WIDTH = 700;
const HEIGHT = 500;
const FRAME = { left: 132, top: 30, foot: 452, mostWide: 170 };
const USES = 318;
const BACKING = 380;
const PRESSURE = { zero: 548, full: 640 };

/** The form from outside with its clamps, each shaded by its use, and the pressure beside it at the same scale. */
export function ClampElevation({ units, points, pourHeightMm, backing, withoutMm, ...given }: ClampElevationProps) {
  const numbers = elevationNumbers(given, FRAME);
  const { toY, face } = numbers;
  const heights = given.clamps.map(({ height_mm }) => lengthFigure(height_mm, units));
  const marks = [
    { y: toY(0), text: "0" },
    ...given.clamps.map(({ height_mm }, index) => ({ y: toY(height_mm), text: heights[index] ?? "" })),
    { y: toY(given.formHeightMm), text: lengthFigure(given.formHeightMm, units), isStrong: true },
  ];
  const uses = given.clamps.map(({ utilisation }, index) => `${heights[index]}: ${percent(utilisation)}`);
  return (
    <Drawing title="Elevation with its clamps" description={`Clamps by height above the foot and how far each is used: ${uses.join(", ")}. Backing timber: ${backing.map(({ what, utilisation }) => `${what} ${percent(utilisation)}`).join(", ")}.`} width={WIDTH} height={HEIGHT}>
      <rect x={round1(face.x)} y={round1(face.y)} width={round1(face.width)} height={round1(face.height)} className="fill-ply stroke-ink" strokeWidth={1.4} />
      <Bars numbers={numbers} />
      {withoutMm === undefined ? null : <MissingBar numbers={numbers} heightMm={withoutMm} sideMm={given.wedgeSpanMm} />}
      <RunningDimensions marks={marks} x={112} reach={20} from={16} to={HEIGHT - 36} />
      <UseTexts numbers={numbers} />
      <BackingMarks backing={backing} toY={toY} from={face.x + face.width} />
      <Pressure points={points} pourHeightMm={pourHeightMm} toY={toY} formHeightMm={given.formHeightMm} clamps={given.clamps} units={units} />
      <text x={round1(face.x + face.width / 2)} y={HEIGHT - 8} textAnchor="middle" fontWeight={600}>Elevation</text>
      <text x={USES + 18} y={HEIGHT - 8} textAnchor="middle" fontWeight={600}>Clamp</text>
      <text x={BACKING + 50} y={HEIGHT - 8} textAnchor="middle" fontWeight={600}>Backing</text>
      <text x={PRESSURE.zero} y={HEIGHT - 8} fontWeight={600}>Pressure</text>
    </Drawing>
  );
}

function Bars({ numbers: { bars } }: { readonly numbers: ElevationNumbers }) {
  return (
    <g>
      {bars.map(({ x, y, width, height, heightMm, utilisation }) => {
        const box = { x: round1(x), y: round1(y), width: round1(width), height };
        return (
          <g key={heightMm}>
            <rect {...box} className="fill-sheet stroke-ink" strokeWidth={1.2} />
            <rect {...box} className={utilisation > 1 ? "fill-flag" : "fill-accent"} fillOpacity={utilisation > 1 ? 1 : shadeOf(utilisation)} />
          </g>
        );
      })}
    </g>
  );
}

function MissingBar({ numbers: { toY, scale, face }, heightMm, sideMm }: { readonly numbers: ElevationNumbers; readonly heightMm: number; readonly sideMm: number }) {
  const middle = face.x + face.width / 2;
  const half = (sideMm * scale) / 2;
  return (
    <g>
      <rect x={round1(middle - half)} y={round1(toY(heightMm) - 3.5)} width={round1(half * 2)} height={7} fill="none" className="stroke-flag" strokeWidth={1.4} strokeDasharray="5 3" />
      <text x={round1(middle)} y={round1(toY(heightMm)) - 7} textAnchor="middle" fontSize={11} className="fill-flag-deep">left out</text>
    </g>
  );
}

function UseTexts({ numbers: { bars } }: { readonly numbers: ElevationNumbers }) {
  const places = spread(bars.map(({ y, height }) => -(y + height / 2)), 13.5).map((place) => -place);
  return (
    <g>
      {bars.map(({ x, y, width, height, heightMm, utilisation }, index) => (
        <g key={heightMm}>
          <path d={`M${round1(x + width + 3)} ${round1(y + height / 2)}L${USES - 12} ${round1(places[index] ?? y)}h8`} fill="none" className="stroke-rule-soft" strokeWidth={0.8} />
          <text x={USES + 36} y={round1(places[index] ?? y)} dy={4} textAnchor="end" fontWeight={utilisation > 1 ? 800 : 600} className={utilisation > 1 ? "fill-flag-deep" : ""}>{percent(utilisation)}</text>
        </g>
      ))}
    </g>
  );
}

function BackingMarks({ backing, toY, from }: Pick<ClampElevationProps, "backing"> & { readonly toY: (heightMm: number) => number; readonly from: number }) {
  const order = [...backing].sort((a, b) => a.at_mm - b.at_mm);
  const places = spread(order.map(({ at_mm }) => -toY(at_mm)), 30, -(FRAME.foot - 4), -FRAME.top).map((place) => -place);
  return (
    <g>
      {order.map(({ what, at_mm, utilisation }, index) => {
        const place = round1(places[index] ?? 0);
        const y = round1(toY(at_mm));
        return (
          <g key={what}>
            <circle cx={round1(from)} cy={y} r={3} className={utilisation > 1 ? "fill-flag" : "fill-ink"} />
            <path d={`M${round1(from)} ${y}L${BACKING - 8} ${place}h5`} fill="none" className="stroke-ink" strokeWidth={0.7} strokeDasharray="2 2" />
            <text x={BACKING} y={place} fontSize={11.5} className={utilisation > 1 ? "fill-flag-deep" : ""}>
              <tspan x={BACKING} dy={-2}>{what}</tspan>
              <tspan x={BACKING} dy={13} fontWeight={700}>{percent(utilisation)}</tspan>
            </text>
          </g>
        );
      })}
    </g>
  );
}

type PressureProps = Pick<ClampElevationProps, "points" | "pourHeightMm" | "formHeightMm" | "clamps" | "units"> & { readonly toY: (heightMm: number) => number };

function Pressure({ points, pourHeightMm, formHeightMm, toY, units }: PressureProps) {
  const most = Math.max(...points.map(({ pressure_kPa }) => pressure_kPa), 1e-6);
  const toX = linear(0, most, PRESSURE.zero, PRESSURE.full);
  const corners = points.map(({ depth_m, pressure_kPa }) => ({ x: toX(pressure_kPa), y: toY(pourHeightMm - depth_m * 1000), pressure: pressure_kPa }));
  const foot = round1(toY(0));
  return (
    <g>
      <path d={`${pathThrough(corners)}L${PRESSURE.zero} ${foot}L${PRESSURE.zero} ${round1(corners[0]?.y ?? foot)}z`} className="fill-accent-wash stroke-ink" strokeWidth={1.3} />
      <path d={`M${PRESSURE.zero} ${foot}V${round1(toY(formHeightMm))}`} fill="none" className="stroke-ink" strokeWidth={2} />
      {corners.filter(({ pressure }) => pressure > 0).map(({ x, y, pressure }) => (
        <text key={y} x={round1(x) - 4} y={round1(y) - 6} textAnchor="middle" fontWeight={600}>{quantityText(pressure, "kPa", units)}</text>
      ))}
    </g>
  );
}
