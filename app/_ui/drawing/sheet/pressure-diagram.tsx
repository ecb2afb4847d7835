import type { FormSet } from "#lib/trade/shutter/form-set.ts";
import type { FaceName } from "#lib/trade/shutter/shutter-rule.ts";
import { quantityText, type Units } from "#app/_ui/value/format-quantity.ts";
import { Drawing } from "./drawing.tsx";
import { elevationHeight, elevationOf, PRESSURE_WIDTH, round1, uprightOf } from "./sheet-scale.ts";
import { spread } from "./spread.ts";

export type PressureDiagramProps = {
  readonly formSet: FormSet;
  /** The elevation it stands beside. */
  readonly face: FaceName;
  readonly units: Units;
  readonly height?: number;
  /** Its place inside a larger drawing. */
  readonly x?: number;
};

const ZERO = 12;
const FULL = 92;

/** The pressure of the fresh concrete over the height, at the scale of the elevation beside it. */
export function PressureDiagram({ formSet, face, units, height: given, x }: PressureDiagramProps) {
  const elevation = elevationOf(formSet, face);
  if (!elevation) return null;
  const { pressure } = formSet;
  const height = given ?? elevationHeight(elevation);
  const upright = uprightOf(elevation, height);
  const most = Math.max(...pressure.points.map((point) => point.pressure), 1e-6);
  const corners = pressure.points.map((point) => ({
    x: ZERO + (point.pressure / most) * FULL,
    y: upright.toY(elevation.concreteTop - point.depth * 1000),
    text: point.pressure === 0 ? "0" : quantityText(point.pressure, "kPa", units),
  }));
  const foot = corners.at(-1)?.y ?? upright.toY(0);
  const head = corners[0]?.y ?? foot;
  const places = spread(corners.map(({ y }) => y), 14, 18, height - 42);
  return (
    <Drawing
      title="Pressure of the fresh concrete"
      description={`From 0 at the top of the concrete to ${quantityText(pressure.limit, "kPa", units)} at the foot; ${pressure.edition}.`}
      width={PRESSURE_WIDTH}
      height={height}
      {...(x === undefined ? {} : { x })}
    >
      <path d={`M${ZERO} ${round1(head)}${corners.map(({ x, y }) => `L${round1(x)} ${round1(y)}`).join("")}L${ZERO} ${round1(foot)}z`} className="fill-accent-wash stroke-ink" strokeWidth={1.2} />
      {elevation.clamps.map((clamp) => <Thrust key={clamp.height} y={upright.toY(clamp.height)} to={edgeAt(corners, upright.toY(clamp.height))} />)}
      <path d={`M${ZERO} ${round1(upright.toY(0))}V${round1(upright.toY(formSet.formHeight))}`} fill="none" className="stroke-ink" strokeWidth={1.6} />
      {corners.map(({ x, y, text }, index) => (
        <text key={index} x={round1(x + 6)} y={round1(places[index] ?? y)} dy={4} fontWeight={600}>{text}</text>
      ))}
      <text x={ZERO} y={height - 5} fontWeight={600}>Pressure</text>
    </Drawing>
  );
}

type Corner = { readonly x: number; readonly y: number };

/** Right-hand edge of the diagram at a height; the zero line above and below it. */
function edgeAt(corners: readonly Corner[], y: number): number {
  for (const [index, lower] of corners.entries()) {
    const upper = corners[index - 1];
    if (!upper || y < upper.y || y > lower.y || lower.y === upper.y) continue;
    return upper.x + ((lower.x - upper.x) * (y - upper.y)) / (lower.y - upper.y);
  }
  return ZERO;
}

/** What a clamp has to hold: an arrow towards the form. */
function Thrust({ y, to }: { readonly y: number; readonly to: number }) {
  if (to < ZERO + 8) return null;
  return <path d={`M${round1(to)} ${round1(y)}H${ZERO + 2}m5 -3l-5 3l5 3`} fill="none" className="stroke-accent" strokeWidth={1.1} />;
}
