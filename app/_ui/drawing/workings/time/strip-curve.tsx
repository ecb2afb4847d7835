import { Drawing } from "../../sheet/drawing.tsx";
import { round1 } from "../../sheet/sheet-scale.ts";
import { quantityText, type Units } from "#app/_ui/value/format-quantity.ts";
import { quantityEdge } from "#app/_ui/value/quantity-edge.ts";
import { curveNumbers, type CurveFrame, type CurveGiven, type CurveNumbers } from "./curve-numbers.ts";
import { pathThrough, roundSteps } from "../scale.ts";

export type StripCurveProps = CurveGiven & {
  readonly units: Units;
  /** "420 °C·h" */
  readonly requiredText: string;
  /** A figure of the curve as the project reads it, and its unit. */
  readonly toShown: (value: number) => number;
  readonly fromShown: (value: number) => number;
  readonly unitText: string;
  readonly measured: string;
};

const WIDTH = 680;
const HEIGHT = 440;
const FRAME: CurveFrame = { left: 70, right: 650, curve: [250, 40], record: [390, 300] };

/** What has been gathered since the pour against what is asked for, and the temperatures below it. */
export function StripCurve({ units, requiredText, toShown, fromShown, unitText, measured, ...given }: StripCurveProps) {
  const numbers = curveNumbers(given, FRAME);
  const { toX, toY, reached, curve, hours, most } = numbers;
  const moment = `${quantityText(given.earliestHours, "h", units)}`;
  const [foot, top] = FRAME.curve;
  return (
    <Drawing title="Gathered since the pour" description={`${requiredText} are reached ${moment} after the end of the pour, from ${given.hourly.length} hourly temperatures of the ${measured}.`} width={WIDTH} height={HEIGHT}>
      <path d={`M${FRAME.left} ${top - 16}V${foot}H${FRAME.right}`} className="stroke-ink" strokeWidth={1.2} fill="none" />
      {roundSteps(0, toShown(most), 5).map((step) => (
        <g key={step}>
          <path d={`M${FRAME.left - 5} ${round1(toY(fromShown(step)))}h5`} className="stroke-ink" strokeWidth={1.2} fill="none" />
          <text x={FRAME.left - 9} y={round1(toY(fromShown(step))) + 4} textAnchor="end">{step}</text>
        </g>
      ))}
      <text x={FRAME.left + 6} y={top - 12} fontWeight={600}>{unitText}</text>
      <path d={`M${FRAME.left} ${round1(reached.y)}H${FRAME.right}`} className="stroke-accent" strokeWidth={1.4} strokeDasharray="7 4" fill="none" />
      <text className="dim-text" x={FRAME.left + 8} y={round1(reached.y) - 6} fontWeight={600}>asked for: {requiredText}</text>
      <path d={pathThrough(curve)} className="stroke-ink" strokeWidth={2.2} fill="none" />
      <path d={`M${round1(reached.x)} ${round1(reached.y)}V${FRAME.record[0]}`} className="stroke-accent" strokeWidth={1.4} fill="none" />
      <circle cx={round1(reached.x)} cy={round1(reached.y)} r={5} className="fill-accent stroke-sheet" strokeWidth={1.4} />
      <text className="dim-text" x={round1(reached.x)} y={round1(reached.y) + 22} dx={reached.x > WIDTH / 2 ? -8 : 8} textAnchor={reached.x > WIDTH / 2 ? "end" : "start"} fontSize={14} fontWeight={700}>{moment}</text>
      <Record numbers={numbers} units={units} measured={measured} />
      {roundSteps(0, hours, 10).map((hour) => (
        <g key={hour}>
          <path d={`M${round1(toX(hour))} ${FRAME.record[0]}v5M${round1(toX(hour))} ${foot}v5`} className="stroke-ink" strokeWidth={1.2} fill="none" />
          <text x={round1(toX(hour))} y={FRAME.record[0] + 19} textAnchor="middle">{hour}</text>
        </g>
      ))}
      <text x={(FRAME.left + FRAME.right) / 2} y={HEIGHT - 8} textAnchor="middle" fontWeight={600}>Hours after the end of the pour</text>
    </Drawing>
  );
}

function Record({ numbers: { record, toTemperature, coldest, warmest }, units, measured }: { readonly numbers: CurveNumbers; readonly units: Units; readonly measured: string }) {
  const edge = quantityEdge("degC", units);
  const [foot, top] = FRAME.record;
  return (
    <g>
      <path d={`M${FRAME.left} ${top - 6}V${foot}H${FRAME.right}`} className="stroke-ink" strokeWidth={1.2} fill="none" />
      {roundSteps(edge.toTyped(coldest), edge.toTyped(warmest), 4).map((step) => (
        <g key={step}>
          <path d={`M${FRAME.left - 5} ${round1(toTemperature(edge.toKept(step)))}h5`} className="stroke-ink" strokeWidth={1.2} fill="none" />
          <text x={FRAME.left - 9} y={round1(toTemperature(edge.toKept(step))) + 4} textAnchor="end">{step}</text>
        </g>
      ))}
      {record.map((run, index) => <path key={index} d={pathThrough(run)} className="stroke-ink" strokeWidth={1.4} fill="none" />)}
      <text x={FRAME.left + 6} y={top - 8} fontWeight={600}>{edge.unit}, {measured}</text>
    </g>
  );
}
