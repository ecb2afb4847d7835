import { useId } from "react";
import type { Offcut, Place, PlacedPart, Sheet, SheetLayout } from "#lib/trade/planning/sheets/sheet-order.ts";
import type { StagedCut } from "#lib/trade/planning/sheets/cut-stages.ts";
import { DimensionLine } from "../sheet/dimension-line.tsx";
import { Drawing } from "../sheet/drawing.tsx";

export type PieceWords = { readonly label: string; readonly size: string };
export type SheetLayoutProps = {
  readonly sheet: Sheet;
  readonly layout: SheetLayout;
  /** In the order of the saw, numbered from 1. */
  readonly cuts: readonly StagedCut[];
  readonly wordsOf: (part: PlacedPart) => PieceWords;
  readonly lengthText: (valueMm: number) => string;
  readonly title: string;
};

const WIDTH = 760;
const LEFT = 44;
const TOP = 30;
const EDGE = 6;
const LETTER = 6.4;
const LINE = 14;

/** One sheet to scale: pieces with what is written on them, cuts numbered in cutting order, offcuts to keep dashed, waste hatched. */
export function SheetLayoutDrawing({ sheet, layout, cuts, wordsOf, lengthText, title }: SheetLayoutProps) {
  const waste = useId();
  const scale = (WIDTH - LEFT - EDGE) / sheet.widthMm;
  const height = Math.ceil(TOP + sheet.heightMm * scale + EDGE);
  const at = (place: Place) => ({ x: LEFT + place.x * scale, y: TOP + place.y * scale, width: place.w * scale, height: place.h * scale });
  const kept = layout.offcuts.filter((offcut) => offcut.kept).length;
  return (
    <Drawing title={title} width={WIDTH} height={height} description={`${layout.parts.length} pieces, ${cuts.length} cuts, ${kept === 0 ? "no offcut to keep" : `${kept} offcuts to keep`}.`}>
      <defs>
        <pattern id={waste} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0V7" stroke="currentColor" strokeWidth="0.8" opacity="0.45" /></pattern>
      </defs>
      <rect {...at({ x: 0, y: 0, w: sheet.widthMm, h: sheet.heightMm })} fill={`url(#${waste})`} stroke="currentColor" strokeWidth={2} />
      {layout.offcuts.filter((offcut) => offcut.kept).map((offcut) => <KeptOffcut key={`${offcut.x} ${offcut.y}`} offcut={offcut} box={at(offcut)} lengthText={lengthText} />)}
      {layout.parts.map((part) => (
        <g key={`${part.x} ${part.y}`}>
          <rect {...at(part)} fill="var(--color-ply)" stroke="currentColor" strokeWidth={1} />
          <BoxText box={at(part)} lines={[wordsOf(part).label, wordsOf(part).size]} />
        </g>
      ))}
      {cuts.map((cut, index) => <CutMark key={index} number={index + 1} cut={cut} box={at(cut.piece)} at={cut.dir === "down" ? LEFT + cut.at * scale : TOP + cut.at * scale} />)}
      <DimensionLine along="across" from={LEFT} to={LEFT + sheet.widthMm * scale} at={18} witness={TOP - 2} text={lengthText(sheet.widthMm)} />
      <DimensionLine along="up" from={TOP} to={TOP + sheet.heightMm * scale} at={30} witness={LEFT - 2} text={lengthText(sheet.heightMm)} />
    </Drawing>
  );
}

type Box = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

function KeptOffcut({ offcut, box, lengthText }: { readonly offcut: Offcut; readonly box: Box; readonly lengthText: (valueMm: number) => string }) {
  return (
    <g>
      <rect {...box} fill="var(--color-sheet)" stroke="currentColor" strokeDasharray="6 4" />
      <BoxText box={box} lines={["Keep", `${lengthText(offcut.w)} × ${lengthText(offcut.h)}`]} />
    </g>
  );
}

/** As many of the lines as the box takes, upright or turned a quarter; none where not even the first fits. */
function BoxText({ box, lines }: { readonly box: Box; readonly lines: readonly string[] }) {
  const turned = box.height > box.width && Math.max(...lines.map((line) => line.length)) * LETTER > box.width - 4;
  const [along, across] = turned ? [box.height, box.width] : [box.width, box.height];
  const fitting = lines.filter((line, index) => line.length * LETTER <= along - 4 && (index + 1) * LINE <= across);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  return (
    <text textAnchor="middle" transform={turned ? `rotate(-90 ${x} ${y})` : undefined}>
      {fitting.map((line, index) => <tspan key={index} x={x} y={y + 4 + (index - (fitting.length - 1) / 2) * LINE} fontWeight={index === 0 ? 650 : 400}>{line}</tspan>)}
    </text>
  );
}

function CutMark({ number, cut, box, at }: { readonly number: number; readonly cut: StagedCut; readonly box: Box; readonly at: number }) {
  const [x, y] = cut.dir === "down" ? [at, box.y + 10] : [box.x + 10, at];
  const wide = number > 9 ? 9 : 8;
  return (
    <g>
      <path className="dim" strokeWidth={1.6} d={cut.dir === "down" ? `M${at} ${box.y}V${box.y + box.height}` : `M${box.x} ${at}H${box.x + box.width}`} />
      <circle cx={x} cy={y} r={wide} fill="var(--color-sheet)" stroke="var(--color-accent)" />
      <text x={x} y={y + 3.6} textAnchor="middle" fontSize={10} fontWeight={650}>{number}</text>
    </g>
  );
}
