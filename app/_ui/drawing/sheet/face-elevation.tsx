import type { FaceElevation as Elevation, FormSet, Rect } from "#lib/trade/shutter/form-set.ts";
import type { FaceName } from "#lib/trade/shutter/shutter-rule.ts";
import { lengthFigure, type Units } from "#app/_ui/value/format-quantity.ts";
import { DimensionLine } from "./dimension-line.tsx";
import { Drawing } from "./drawing.tsx";
import { JointNotes } from "./joint-notes.tsx";
import { RunningDimensions, type RunningMark } from "./running-dimensions.tsx";
import { besideForm, elevationHeight, elevationOf, elevationWidth, round1, runningRoom, uprightOf } from "./sheet-scale.ts";

export type FaceElevationProps = {
  readonly formSet: FormSet;
  readonly face: FaceName;
  readonly units: Units;
  /** Of the drawing, in pixels; give its neighbours the same. */
  readonly height?: number;
  /** Its place inside a larger drawing. */
  readonly x?: number;
};

const LEAST_BAR = 3.5;

/** One face from outside: sheets, timbers and cleats, and every clamp with its height above the foot. */
export function FaceElevation({ formSet, face, units, height: given, x }: FaceElevationProps) {
  const elevation = elevationOf(formSet, face);
  if (!elevation) return null;
  const { bounds } = elevation;
  const height = given ?? elevationHeight(elevation);
  const upright = uprightOf(elevation, height);
  const { left } = besideForm(units);
  const toX = (x: number): number => left + (x - bounds.x) * upright.scale;
  const box = (rect: Rect) => ({ x: round1(toX(rect.x)), y: round1(upright.toY(rect.y + rect.h)), width: round1(rect.w * upright.scale), height: round1(rect.h * upright.scale) });
  const ply = outlineOf(elevation.ply);
  const heights = elevation.clamps.map((clamp) => lengthFigure(clamp.height, units));
  const marks: readonly RunningMark[] = [
    { y: upright.toY(0), text: "0" },
    ...elevation.clamps.map((clamp, index) => ({ y: upright.toY(clamp.height), text: heights[index] ?? "" })),
    { y: upright.toY(formSet.formHeight), text: lengthFigure(formSet.formHeight, units), isStrong: true },
  ];
  return (
    <Drawing
      title={`Elevation of face ${face}`}
      description={`${heights.length} clamps; their centres above the foot of the form: ${heights.join(", ")}. Form height ${lengthFigure(formSet.formHeight, units)}.`}
      width={elevationWidth(elevation, height, units)}
      height={height}
      {...(x === undefined ? {} : { x })}
    >
      {elevation.ply.map((rect, index) => <rect key={index} {...box(rect)} className="fill-ply stroke-ink" strokeWidth={1.2} />)}
      {elevation.timbers.map(({ rect }, index) => <rect key={index} {...box(rect)} className="fill-sheet stroke-ink" strokeWidth={0.8} />)}
      {elevation.cleats.map(({ rect }, index) => <rect key={index} {...box(rect)} className="fill-wash stroke-ink" strokeWidth={0.8} />)}
      {elevation.clamps.map((clamp) => <Bar key={clamp.height} {...box(clamp.rect)} />)}
      <ConcreteTop elevation={elevation} y={upright.toY(elevation.concreteTop)} from={toX(ply.x) - 6} to={toX(ply.x + ply.w) + 14} />
      <RunningDimensions marks={marks} x={left - 16} reach={22} {...runningRoom(height)} />
      <JointNotes ply={elevation.ply} x={toX(bounds.x + bounds.w) + 4} from={toX(ply.x + ply.w)} toY={upright.toY} units={units} />
      <DimensionLine along="across" from={toX(ply.x)} to={toX(ply.x + ply.w)} at={height - 22} witness={height - 40} text={lengthFigure(ply.w, units)} />
      <text x={toX(ply.x + ply.w / 2)} y={height - 5} textAnchor="middle" fontWeight={600}>{`Face ${face}`}</text>
    </Drawing>
  );
}

type Box = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

function Bar({ x, y, width, height }: Box) {
  const drawn = Math.max(height, LEAST_BAR);
  return <rect x={x} y={y - (drawn - height) / 2} width={width} height={drawn} className="fill-ink stroke-sheet" strokeWidth={0.6} />;
}

function ConcreteTop({ elevation, y, from, to }: { readonly elevation: Elevation; readonly y: number; readonly from: number; readonly to: number }) {
  if (elevation.concreteTop <= 0) return null;
  return (
    <g>
      <path d={`M${round1(from)} ${round1(y)}H${round1(to)}`} fill="none" className="stroke-accent" strokeWidth={1.6} strokeDasharray="7 3" />
      <path d={`M${round1(to - 10)} ${round1(y - 8)}h10l-5 8z`} className="fill-sheet stroke-accent" strokeWidth={1.2} />
    </g>
  );
}

/** The box around the sheets of a face. */
function outlineOf(sheets: readonly Rect[]): { readonly x: number; readonly w: number } {
  const left = sheets.reduce((least, { x }) => Math.min(least, x), Infinity);
  const right = sheets.reduce((most, { x, w }) => Math.max(most, x + w), -Infinity);
  return sheets.length === 0 ? { x: 0, w: 0 } : { x: left, w: right - left };
}
