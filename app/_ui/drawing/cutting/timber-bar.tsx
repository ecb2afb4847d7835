import { useId } from "react";
import type { TimberLayout } from "#lib/trade/planning/timber/timber-order.ts";
import { Drawing } from "../sheet/drawing.tsx";

export type TimberBarProps = {
  readonly layout: TimberLayout;
  readonly stockMm: number;
  readonly longestMm: number;
  readonly lengthText: (valueMm: number) => string;
  readonly labelOf: (partId: string) => string;
};

const WIDTH = 760;
const HEIGHT = 46;
const DEEP = 34;
const LETTER = 6.4;

/** One length of timber as a bar, cut by cut from the left; what is left over is dashed when it is kept, hatched when not. */
export function TimberBar({ layout, stockMm, longestMm, lengthText, labelOf }: TimberBarProps) {
  const waste = useId();
  const scale = (WIDTH - 4) / longestMm;
  let from = 0;
  const cuts = layout.cuts.map((cut) => {
    const x = 2 + from * scale;
    from += cut.lengthMm;
    return { ...cut, x, w: cut.lengthMm * scale };
  });
  const end = 2 + stockMm * scale;
  const left = end - 2 - layout.offcutMm * scale;
  return (
    <Drawing title={`${lengthText(stockMm)}: ${layout.cuts.map((cut) => lengthText(cut.lengthMm)).join(", ")}`} width={WIDTH} height={HEIGHT} description={`Left over ${lengthText(layout.offcutMm)}, ${layout.kept ? "to be kept" : "waste"}.`}>
      <defs>
        <pattern id={waste} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0V7" stroke="currentColor" strokeWidth="0.8" opacity="0.45" /></pattern>
      </defs>
      <rect x={2} y={4} width={stockMm * scale} height={DEEP} fill={`url(#${waste})`} stroke="currentColor" />
      {layout.kept ? <rect x={left} y={4} width={Math.max(0, end - left)} height={DEEP} fill="var(--color-sheet)" stroke="currentColor" strokeDasharray="6 4" /> : null}
      {cuts.map((cut, index) => (
        <g key={index}>
          <rect x={cut.x} y={4} width={cut.w} height={DEEP} fill="var(--color-ply)" stroke="currentColor" />
          <BarText x={cut.x + cut.w / 2} width={cut.w} lines={[labelOf(cut.partId), lengthText(cut.lengthMm)]} />
        </g>
      ))}
      {layout.kept ? <BarText x={(left + end) / 2} width={end - left} lines={["Keep", lengthText(layout.offcutMm)]} /> : null}
    </Drawing>
  );
}

function BarText({ x, width, lines }: { readonly x: number; readonly width: number; readonly lines: readonly string[] }) {
  const fitting = lines.filter((line) => line.length * LETTER <= width - 2).slice(-2);
  return (
    <text textAnchor="middle" fontSize={11}>
      {fitting.map((line, index) => <tspan key={index} x={x} y={25 + (index - (fitting.length - 1) / 2) * 13}>{line}</tspan>)}
    </text>
  );
}
