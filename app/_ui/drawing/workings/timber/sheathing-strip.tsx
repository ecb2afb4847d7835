import { DimensionLine } from "../../sheet/dimension-line.tsx";
import { Drawing } from "../../sheet/drawing.tsx";
import { round1 } from "../../sheet/sheet-scale.ts";
import { lengthFigure, quantityText, type Units } from "#app/_ui/value/format-quantity.ts";
import { percent } from "#app/_ui/value/working-words.ts";
import { linear } from "../scale.ts";
import { stripNumbers, type StripGiven } from "./strip-numbers.ts";

export type Use = { readonly what: string; readonly utilisation: number };
export type SheathingStripProps = StripGiven & { readonly pressure: number; readonly uses: readonly Use[]; readonly units: Units };

const WIDTH = 660;
const HEIGHT = 330;
const BOARD = { y: 96, thick: 12 };
const ARROWS = 24;

/** The strip over its spans under its pressure, and below it how far each limit is used. */
export function SheathingStrip({ pressure, uses, units, ...given }: SheathingStripProps) {
  const { toX, supports, from, to } = stripNumbers(given, 24, WIDTH - 24);
  const first = toX(0);
  const next = toX(given.centresMm);
  const under = BOARD.y + BOARD.thick;
  return (
    <Drawing title="Board over its supports" description={`${given.spans === 3 ? "Three or more" : given.spans} spans of ${lengthFigure(given.centresMm, units)} under ${quantityText(pressure, "kPa", units)}. ${uses.map(({ what, utilisation }) => `${what} ${percent(utilisation)}`).join(", ")}.`} width={WIDTH} height={HEIGHT}>
      <text x={WIDTH / 2} y={18} textAnchor="middle" fontWeight={700}>{quantityText(pressure, "kPa", units)} over the whole strip</text>
      <path d={`M${round1(from)} 30H${round1(to)}`} className="stroke-ink" strokeWidth={1.2} fill="none" />
      {Array.from({ length: ARROWS + 1 }, (_, index) => {
        const x = round1(from + ((to - from) * index) / ARROWS);
        return <path key={index} d={`M${x} 30V${BOARD.y - 4}m-4 -8l4 8l4 -8`} className="stroke-ink" strokeWidth={0.9} fill="none" />;
      })}
      <rect x={round1(from)} y={BOARD.y} width={round1(to - from)} height={BOARD.thick} className="fill-ply stroke-ink" strokeWidth={1.4} />
      {supports.map(({ x, width }) => <rect key={x} x={round1(x)} y={under} width={round1(width)} height={34} className="fill-sheet stroke-ink" strokeWidth={1.4} />)}
      <DimensionLine along="across" from={first} to={next} at={under + 58} witness={under + 40} text={lengthFigure(given.centresMm, units)} />
      {given.overhangMm > 0 ? <DimensionLine along="across" from={from} to={first} at={under + 58} witness={under + 40} text={lengthFigure(given.overhangMm, units)} /> : null}
      <UseBars uses={uses} top={under + 84} />
    </Drawing>
  );
}

function UseBars({ uses, top }: { readonly uses: readonly Use[]; readonly top: number }) {
  const most = Math.max(1.1, ...uses.map(({ utilisation }) => Math.min(utilisation, 2)));
  const toX = linear(0, most, 110, WIDTH - 76);
  const foot = top + uses.length * 34;
  return (
    <g>
      {uses.map(({ what, utilisation }, index) => {
        const y = top + index * 34;
        const isOver = utilisation > 1;
        return (
          <g key={what}>
            <text x={100} y={y + 15} textAnchor="end">{what}</text>
            <rect x={110} y={y + 2} width={round1(toX(Math.min(utilisation, most)) - 110)} height={18} className={`${isOver ? "fill-flag" : "fill-accent"} stroke-ink`} strokeWidth={0.8} />
            <text x={round1(toX(Math.min(utilisation, most))) + 6} y={y + 16} fontWeight={700} className={isOver ? "fill-flag-deep" : ""}>{percent(utilisation)}</text>
          </g>
        );
      })}
      <path d={`M${round1(toX(1))} ${top - 6}V${foot}`} className="stroke-ink" strokeWidth={1.4} strokeDasharray="6 3" fill="none" />
      <text x={round1(toX(1))} y={foot + 14} textAnchor="middle" fontSize={11}>limit</text>
    </g>
  );
}
