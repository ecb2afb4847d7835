import { useId } from "react";
import type { FormSet, PlanGeometry, Rect } from "#lib/trade/shutter/form-set.ts";
import type { FaceName } from "#lib/trade/shutter/shutter-rule.ts";
import { lengthFigure, type Units } from "#app/_ui/value/format-quantity.ts";
import { DimensionLine, standsOut } from "./dimension-line.tsx";
import { Drawing } from "./drawing.tsx";
import { round1 } from "./sheet-scale.ts";

export type PlanSectionProps = {
  readonly formSet: FormSet;
  readonly units: Units;
  /** Of the drawing, in pixels; its height follows. */
  readonly width?: number;
};

const MARGIN = 8;
const TIER = 24;
const TIERS = 3;
const TALLEST = 520;

type Placing = { readonly scale: number; readonly toX: (x: number) => number; readonly toY: (y: number) => number };
type Side = { readonly from: number; readonly to: number; readonly name: string };

/** The box cut through level: concrete, fillets, ply, timbers and clamp bars, with the three sizes a carpenter works to. */
export function PlanSection({ formSet, units, width = 420 }: PlanSectionProps) {
  const { plan } = formSet;
  const { bounds } = plan;
  const room = { w: width - 2 * MARGIN - TIER * TIERS, h: TALLEST - 2 * MARGIN - TIER * TIERS };
  const scale = Math.min(room.w / bounds.w, room.h / bounds.h);
  const across = sidesOf(plan, "C", "x");
  const up = sidesOf(plan, "B", "y");
  const out = ({ name, from, to }: Side): number => to * scale + standsOut((to - from) * scale, label({ name, from, to }, units));
  const above = Math.max(0, ...up.map((side) => out(side) - (bounds.y + bounds.h) * scale));
  const beside = Math.max(TIER * TIERS, ...across.map((side) => out(side) - (bounds.x + bounds.w) * scale));
  const place: Placing = { scale, toX: (x) => MARGIN + (x - bounds.x) * scale, toY: (y) => MARGIN + above + (bounds.y + bounds.h - y) * scale };
  const foot = place.toY(bounds.y);
  const right = place.toX(bounds.x + bounds.w);
  return (
    <Drawing
      title="Plan section of the form set"
      description={`Across: ${across.map((side) => `${side.name} ${lengthFigure(side.to - side.from, units)}`).join(", ")}. Up: ${up.map((side) => `${side.name} ${lengthFigure(side.to - side.from, units)}`).join(", ")}.`}
      width={Math.ceil(right + beside + MARGIN)}
      height={Math.ceil(foot + TIER * TIERS + MARGIN)}
    >
      <Made plan={plan} place={place} />
      {across.map((side, tier) => (
        <DimensionLine key={side.name} along="across" from={place.toX(side.from)} to={place.toX(side.to)} at={foot + TIER * (tier + 0.9)} witness={foot + TIER * tier + 8} text={label(side, units)} />
      ))}
      {up.map((side, tier) => (
        <DimensionLine key={side.name} along="up" from={place.toY(side.from)} to={place.toY(side.to)} at={right + TIER * (tier + 0.9)} witness={right + TIER * tier + 8} text={label(side, units)} />
      ))}
    </Drawing>
  );
}

const label = ({ name, from, to }: Side, units: Units): string => `${name} ${lengthFigure(to - from, units)}`;

/** From the concrete outwards. */
function sidesOf(plan: PlanGeometry, face: FaceName, axis: "x" | "y"): readonly Side[] {
  const size = axis === "x" ? "w" : "h";
  const side = (name: string, rect: Rect): Side => ({ name, from: rect[axis], to: rect[axis] + rect[size] });
  const ply = plan.ply.filter((sheet) => sheet.face === face).map((sheet) => side(`panel ${face}`, sheet.rect));
  return [side("concrete", plan.concrete), ...ply.slice(0, 1), side("over timbers", plan.outsideBacking)];
}

function Made({ plan, place }: { readonly plan: PlanGeometry; readonly place: Placing }) {
  const hatch = useId();
  const box = (rect: Rect) => ({ x: round1(place.toX(rect.x)), y: round1(place.toY(rect.y + rect.h)), width: round1(rect.w * place.scale), height: round1(rect.h * place.scale) });
  const bars = [...plan.clampBars].sort((a, b) => Number(a.over) - Number(b.over));
  return (
    <>
      <pattern id={hatch} width={9} height={9} patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
        <path d="M0 4.5H9" className="stroke-edge" strokeWidth={0.9} fill="none" />
      </pattern>
      <rect {...box(plan.concrete)} fill={`url(#${hatch})`} className="stroke-ink" strokeWidth={0.8} />
      {plan.ply.map(({ face, rect }) => <rect key={face} {...box(rect)} className="fill-ply stroke-ink" strokeWidth={1.2} />)}
      {plan.fillets.map(({ corner, points }) => (
        <path key={corner} d={`M${points.map(([x, y]) => `${round1(place.toX(x))} ${round1(place.toY(y))}`).join("L")}z`} className="fill-sheet stroke-ink" strokeWidth={0.9} />
      ))}
      {plan.timbers.map(({ rect }, index) => <Timber key={index} {...box(rect)} />)}
      {bars.map(({ face, rect }) => <rect key={face} {...box(rect)} className="fill-wash stroke-ink" strokeWidth={1.4} />)}
      <FaceLetters plan={plan} place={place} />
    </>
  );
}

/** End grain: the two diagonals. */
function Timber({ x, y, width, height }: { readonly x: number; readonly y: number; readonly width: number; readonly height: number }) {
  return (
    <g className="fill-sheet stroke-ink">
      <rect x={x} y={y} width={width} height={height} strokeWidth={1} />
      <path d={`M${x} ${y}l${width} ${height}m0 ${-height}l${-width} ${height}`} strokeWidth={0.5} />
    </g>
  );
}

function FaceLetters({ plan: { concrete }, place }: { readonly plan: PlanGeometry; readonly place: Placing }) {
  const x = place.toX(concrete.x + concrete.w / 2);
  const y = place.toY(concrete.y + concrete.h / 2);
  const aside = (concrete.w * place.scale) / 2;
  const above = (concrete.h * place.scale) / 2;
  const inset = Math.min(16, aside - 2, above - 2);
  const letters = [["A", x, y - above + inset], ["B", x + aside - inset, y], ["C", x, y + above - inset], ["D", x - aside + inset, y]] as const;
  return (
    <>
      {letters.map(([letter, atX, atY]) => (
        <g key={letter}>
          <circle cx={round1(atX)} cy={round1(atY)} r={9} className="fill-sheet" />
          <text x={round1(atX)} y={round1(atY)} textAnchor="middle" dominantBaseline="central" fontWeight={700}>{letter}</text>
        </g>
      ))}
    </>
  );
}
