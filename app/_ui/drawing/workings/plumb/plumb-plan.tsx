import { Drawing } from "../../sheet/drawing.tsx";
import { round1 } from "../../sheet/sheet-scale.ts";
import { lengthFigure, type Units } from "#app/_ui/value/format-quantity.ts";
import { plumbNumbers, type PlumbGiven } from "./plumb-numbers.ts";
import { pathThrough, type Point } from "../scale.ts";

export type Face = "A" | "B" | "C" | "D";
export type KnockDrawn = { readonly towards: Face; readonly propOn: Face; readonly text: string };
export type PlumbPlanProps = PlumbGiven & { readonly units: Units; readonly knocks: readonly KnockDrawn[]; readonly passes: boolean };

const WIDTH = 640;
const HEIGHT = 520;
const CENTRE = { x: WIDTH / 2, y: HEIGHT / 2 - 8 };
/** Of the larger side, in pixels; the rest is for offsets, arrows and props. */
const LARGEST = 250;

/** Which way each face lies, right and up on plan. */
const WAY: Readonly<Record<Face, Point>> = { A: { x: 0, y: 1 }, B: { x: 1, y: 0 }, C: { x: 0, y: -1 }, D: { x: -1, y: 0 } };

/** Foot and head of the form on plan: how it stands, which way to knock it and from which side to prop. */
export function PlumbPlan({ units, knocks, passes, ...given }: PlumbPlanProps) {
  const numbers = plumbNumbers(given);
  const scale = LARGEST / Math.max(given.widthMm, given.depthMm);
  const at = ({ x, y }: Point): Point => ({ x: CENTRE.x + x * scale, y: CENTRE.y - y * scale });
  const outline = (points: readonly Point[]) => `${pathThrough(points.map(at))}z`;
  const [footCentre, headCentre] = [at(numbers.footCentre), at(numbers.headCentre)];
  return (
    <Drawing title="Foot and head of the form on plan" description={`Offsets drawn ${numbers.factor} times as large as they are. ${knocks.map(({ text }) => text).join(". ")}.`} width={WIDTH} height={HEIGHT}>
      <path d={outline(numbers.right)} fill="none" className="stroke-rule-soft" strokeWidth={1.2} strokeDasharray="4 4" />
      <path d={outline(numbers.foot)} className="fill-concrete stroke-ink" fillOpacity={0.6} strokeWidth={1.4} />
      <path d={outline(numbers.head)} fill="none" className={passes ? "stroke-accent" : "stroke-flag"} strokeWidth={2.6} />
      {numbers.foot.map((corner, index) => {
        const [from, to] = [at(corner), at(numbers.head[index] ?? corner)];
        return <path key={index} d={pathThrough([from, to])} className="stroke-ink" strokeWidth={0.8} />;
      })}
      <circle cx={round1(footCentre.x)} cy={round1(footCentre.y)} r={round1(numbers.allowed * scale)} fill="none" className="stroke-ink" strokeWidth={1} strokeDasharray="3 3" />
      <Cross at={footCentre} />
      <circle cx={round1(headCentre.x)} cy={round1(headCentre.y)} r={4.5} className={passes ? "fill-accent" : "fill-flag"} />
      <Letters widthMm={given.widthMm} depthMm={given.depthMm} scale={scale} />
      {knocks.map((knock) => <KnockArrow key={knock.towards} knock={knock} widthMm={given.widthMm} depthMm={given.depthMm} scale={scale} />)}
      <Legend factor={numbers.factor} allowed={lengthFigure(given.allowedMm, units)} passes={passes} />
    </Drawing>
  );
}

const Cross = ({ at: { x, y } }: { readonly at: Point }) =>
  <path d={`M${round1(x - 7)} ${round1(y)}h14M${round1(x)} ${round1(y - 7)}v14`} className="stroke-ink" strokeWidth={1.6} fill="none" />;

type SizeProps = { readonly widthMm: number; readonly depthMm: number; readonly scale: number };

/** From the centre to the middle of a face, in pixels on the drawing. */
function faceMiddle(face: Face, { widthMm, depthMm, scale }: SizeProps, beyond: number): Point {
  const { x, y } = WAY[face];
  return { x: CENTRE.x + x * ((widthMm * scale) / 2 + beyond), y: CENTRE.y - y * ((depthMm * scale) / 2 + beyond) };
}

function Letters(size: SizeProps) {
  return (
    <g>
      {(["A", "B", "C", "D"] as const).map((face) => {
        const { x, y } = faceMiddle(face, size, -20);
        return <text key={face} x={round1(x)} y={round1(y) + 5} textAnchor="middle" fontSize={15} fontWeight={700}>{face}</text>;
      })}
    </g>
  );
}

/** The arrow the head has to go, and the prop that pushes it, on the side it stands out to. */
function KnockArrow({ knock: { towards, propOn, text }, ...size }: SizeProps & { readonly knock: KnockDrawn }) {
  const way = WAY[towards];
  const from = faceMiddle(propOn, size, 112);
  const to = faceMiddle(propOn, size, 62);
  const side = { x: -way.y, y: way.x };
  const head = [{ x: to.x - way.x * 12 + side.x * 8, y: to.y + way.y * 12 - side.y * 8 }, to, { x: to.x - way.x * 12 - side.x * 8, y: to.y + way.y * 12 + side.y * 8 }];
  const isUpright = way.x === 0;
  const label = { x: from.x + (isUpright ? 14 : 0), y: from.y + (isUpright ? 5 : -14) };
  return (
    <g>
      <path d={pathThrough([from, to])} className="stroke-accent" strokeWidth={4} fill="none" />
      <path d={pathThrough(head)} className="stroke-accent" strokeWidth={4} fill="none" />
      <path d={pathThrough([{ x: from.x + side.x * 11, y: from.y - side.y * 11 }, { x: from.x - side.x * 11, y: from.y + side.y * 11 }])} className="stroke-ink" strokeWidth={4} fill="none" />
      <text className="dim-text" x={round1(label.x)} y={round1(label.y)} textAnchor={isUpright ? "start" : "middle"} fontSize={14} fontWeight={700}>{text}</text>
    </g>
  );
}

function Legend({ factor, allowed, passes }: { readonly factor: number; readonly allowed: string; readonly passes: boolean }) {
  const y = HEIGHT - 14;
  return (
    <g fontSize={11.5}>
      <path d={`M12 ${y - 4}h22`} className="stroke-ink" strokeWidth={1.4} /><text x={40} y={y}>foot</text>
      <path d={`M78 ${y - 4}h22`} className={passes ? "stroke-accent" : "stroke-flag"} strokeWidth={2.6} /><text x={106} y={y}>head</text>
      <path d={`M148 ${y - 4}h22`} className="stroke-rule-soft" strokeWidth={1.2} strokeDasharray="4 4" /><text x={176} y={y}>right place</text>
      <path d={`M252 ${y - 4}h22`} className="stroke-ink" strokeWidth={1} strokeDasharray="3 3" /><text x={280} y={y}>allowed, {allowed}</text>
      <text x={WIDTH - 10} y={y} textAnchor="end" fontWeight={700}>offsets × {factor}</text>
    </g>
  );
}
