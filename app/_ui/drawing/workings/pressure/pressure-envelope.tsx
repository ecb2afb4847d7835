import { Drawing } from "../../sheet/drawing.tsx";
import { round1 } from "../../sheet/sheet-scale.ts";
import { spread } from "../../sheet/spread.ts";
import { lengthFigure, quantityText, type Units } from "#app/_ui/value/format-quantity.ts";
import { quantityEdge } from "#app/_ui/value/quantity-edge.ts";
import { envelopeNumbers, type EnvelopeGiven, type EnvelopeNumbers, type Frame } from "./envelope-numbers.ts";
import { pathThrough, roundSteps } from "../scale.ts";

export type PressureEnvelopeProps = EnvelopeGiven & {
  readonly units: Units;
  readonly edition: string;
  /** Of all the pressure on one metre of face, above the foot. */
  readonly resultant?: { readonly heightMm: number; readonly text: string };
};

const WIDTH = 620;
const HEIGHT = 460;
const FRAME: Frame = { left: 110, right: 470, top: 40, foot: 400 };

/** p(z) over the height of the form: every corner with its height and pressure, the liquid head dashed beside it. */
export function PressureEnvelope({ units, edition, resultant, ...given }: PressureEnvelopeProps) {
  const numbers = envelopeNumbers(given, FRAME);
  const { toY, corners } = numbers;
  const texts = corners.map(({ heightMm, pressure }) => `${quantityText(pressure, "kPa", units)} at ${lengthFigure(heightMm, units)}`);
  return (
    <Drawing title="Pressure of the fresh concrete over the height of the form" description={`${edition}. Pressure and height above the foot: ${texts.join("; ")}.`} width={WIDTH} height={HEIGHT}>
      <Axis numbers={numbers} units={units} />
      <path d={`${pathThrough(corners)}L${FRAME.left} ${FRAME.foot}L${FRAME.left} ${round1(corners[0]?.y ?? FRAME.foot)}z`} className="fill-accent-wash stroke-ink" strokeWidth={1.8} />
      <HeadLine numbers={numbers} units={units} />
      <path d={`M${FRAME.left} ${FRAME.foot}V${round1(toY(given.formHeightMm))}`} fill="none" className="stroke-ink" strokeWidth={4} />
      <ConcreteTop y={toY(given.pourHeightMm)} />
      {resultant ? <Resultant y={toY(resultant.heightMm)} text={resultant.text} height={lengthFigure(Math.round(resultant.heightMm), units)} /> : null}
      <CornerTexts numbers={numbers} units={units} />
    </Drawing>
  );
}

function Axis({ numbers: { toX, most }, units }: { readonly numbers: EnvelopeNumbers; readonly units: Units }) {
  const edge = quantityEdge("kPa", units);
  return (
    <g>
      <path d={`M${FRAME.left} ${FRAME.foot}H${FRAME.right + 14}`} fill="none" className="stroke-ink" strokeWidth={1.2} />
      {roundSteps(0, edge.toTyped(most), 5).map((step) => {
        const x = round1(toX(edge.toKept(step)));
        return (
          <g key={step}>
            <path d={`M${x} ${FRAME.foot}v6`} fill="none" className="stroke-ink" strokeWidth={1.2} />
            <text x={x} y={FRAME.foot + 20} textAnchor="middle">{step}</text>
          </g>
        );
      })}
      <text x={(FRAME.left + FRAME.right) / 2} y={FRAME.foot + 42} textAnchor="middle" fontWeight={600}>Pressure, {edge.unit}</text>
    </g>
  );
}

function HeadLine({ numbers: { headFoot, toY, toX, most }, units }: { readonly numbers: EnvelopeNumbers; readonly units: Units }) {
  if (headFoot === null) return null;
  const top = { x: toX(0), y: toY(0) };
  return (
    <g>
      <HeadPath headFoot={headFoot} />
      <text x={round1(headFoot.x) + 6} y={top.y - 8} fontSize={11}>
        <tspan x={round1(headFoot.x) + 6}>liquid head</tspan>
        <tspan x={round1(headFoot.x) + 6} dy={13}>{quantityText(most, "kPa", units)}</tspan>
      </text>
    </g>
  );
}

const HeadPath = ({ headFoot }: { readonly headFoot: { readonly x: number; readonly y: number } }) =>
  <path d={`M${FRAME.left} ${FRAME.top}L${round1(headFoot.x)} ${round1(headFoot.y)}`} fill="none" className="stroke-ink" strokeWidth={1} strokeDasharray="6 4" />;

function ConcreteTop({ y }: { readonly y: number }) {
  return (
    <g>
      <path d={`M${FRAME.left - 16} ${round1(y)}H${FRAME.left + 44}`} fill="none" className="stroke-accent" strokeWidth={1.6} strokeDasharray="7 3" />
      <path d={`M${FRAME.left + 26} ${round1(y - 10)}h12l-6 10z`} className="fill-sheet stroke-accent" strokeWidth={1.2} />
      <text x={FRAME.left + 50} y={round1(y) + 4} fontSize={11}>top of concrete</text>
    </g>
  );
}

function Resultant({ y, text, height }: { readonly y: number; readonly text: string; readonly height: string }) {
  return (
    <g>
      <path d={`M${FRAME.left + 130} ${round1(y)}H${FRAME.left + 6}m9 -5l-9 5l9 5`} fill="none" className="stroke-accent" strokeWidth={2.4} />
      <text className="dim-text" x={FRAME.left + 26} y={round1(y) - 8} fontWeight={600}>F = {text}</text>
      <text className="dim-text" x={FRAME.left + 26} y={round1(y) + 17} fontSize={11}>{height} above the foot</text>
    </g>
  );
}

/** Heights to the left of the form, pressures at the corners. */
function CornerTexts({ numbers: { corners }, units }: { readonly numbers: EnvelopeNumbers; readonly units: Units }) {
  const places = spread(corners.map(({ y }) => y), 15, FRAME.top - 20, FRAME.foot);
  return (
    <g>
      {corners.map(({ x, y, heightMm, pressure }, index) => {
        const place = round1(places[index] ?? y);
        return (
          <g key={`${heightMm} ${pressure}`}>
            <path className="dim" strokeWidth={0.9} d={`M${FRAME.left - 6} ${round1(y)}h-8L${FRAME.left - 22} ${place}h-4`} />
            <text className="dim-text" x={FRAME.left - 30} y={place} dy={4} textAnchor="end">{lengthFigure(Math.round(heightMm), units)}</text>
            <circle cx={round1(x)} cy={round1(y)} r={3.5} className="fill-ink stroke-sheet" strokeWidth={1} />
            {pressure > 0 ? <text x={round1(x) + 8} y={round1(y) - (index === corners.length - 1 ? 8 : 6)} fontWeight={700}>{quantityText(pressure, "kPa", units)}</text> : null}
          </g>
        );
      })}
    </g>
  );
}
