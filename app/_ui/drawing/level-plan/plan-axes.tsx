import { toScreen, type Frame, type PlanView } from "./plan-view.ts";
import type { GridAxis } from "./plan-model.ts";

export type PlanAxesProps = {
  readonly axes: readonly GridAxis[];
  readonly view: PlanView;
  readonly frame: Frame;
  readonly onPress: (axis: GridAxis) => void;
};

const BUBBLE = 15;
const AT = 20;

type Placed = { readonly axis: GridAxis; readonly at: number };

function placed({ axes, view, frame }: PlanAxesProps, direction: "x" | "y"): readonly Placed[] {
  return axes
    .filter((axis) => axis.direction === direction)
    .map((axis) => ({ axis, at: toScreen(view, frame, { x: axis.offset_mm, y: axis.offset_mm })[direction] }))
    .filter(({ at }) => at > AT * 2 - 4 && at < (direction === "x" ? frame.width : frame.height) - 4)
    .sort((a, b) => a.at - b.at);
}

/** Leaves out names that would lie over the one before. */
const named = (row: readonly Placed[]): readonly Placed[] =>
  row.reduce<Placed[]>((kept, next) => (next.at - (kept.at(-1)?.at ?? -Infinity) >= BUBBLE * 2 + 2 ? [...kept, next] : kept), []);

/** Grid lines under the columns. */
export function PlanLines(props: PlanAxesProps) {
  const { frame } = props;
  const up = placed(props, "x").map(({ at }) => `M${at.toFixed(1)} ${AT}V${frame.height}`);
  const across = placed(props, "y").map(({ at }) => `M${AT} ${at.toFixed(1)}H${frame.width}`);
  return <path d={[...up, ...across].join("")} fill="none" className="stroke-edge" strokeWidth={1} strokeDasharray="14 3 3 3" />;
}

/** The names, held at the edge of the frame however far in one looks; pressing one picks its columns. */
export function PlanBubbles(props: PlanAxesProps) {
  const { frame, onPress } = props;
  return (
    <>
      <path d={`M0 0H${frame.width}V${AT * 2}H${AT * 2}V${frame.height}H0z`} className="fill-sheet" fillOpacity={0.9} />
      {(["x", "y"] as const).flatMap((direction) => named(placed(props, direction)).map(({ axis, at }) => (
        <Bubble key={`${direction} ${axis.name}`} axis={axis} x={direction === "x" ? at : AT} y={direction === "x" ? AT : at} onPress={onPress} />
      )))}
    </>
  );
}

type BubbleProps = { readonly axis: GridAxis; readonly x: number; readonly y: number; readonly onPress: (axis: GridAxis) => void };

function Bubble({ axis, x, y, onPress }: BubbleProps) {
  return (
    <g
      role="button"
      tabIndex={0}
      aria-label={`Columns on grid line ${axis.name}`}
      transform={`translate(${x.toFixed(1)} ${y.toFixed(1)})`}
      className="group cursor-pointer outline-none"
      onClick={(event) => { event.stopPropagation(); onPress(axis); }}
      onKeyDown={(event) => {
        if (event.key !== "Enter" && event.key !== " ") return;
        event.preventDefault();
        onPress(axis);
      }}
    >
      <rect x={-AT} y={-AT} width={AT * 2} height={AT * 2} fill="transparent" />
      <circle r={BUBBLE} className="fill-sheet stroke-ink group-hover:fill-accent-wash group-focus-visible:stroke-accent group-focus-visible:stroke-[4px]" strokeWidth={1.5} />
      <text textAnchor="middle" dominantBaseline="central" fontSize={axis.name.length > 2 ? 10 : 13} fontWeight={600}>{axis.name}</text>
    </g>
  );
}
