"use client";

import { boundsOf, type GridAxis, type PlanColumn } from "#app/_ui/drawing/level-plan/plan-model.ts";
import { PlanBubbles, PlanLines } from "#app/_ui/drawing/level-plan/plan-axes.tsx";
import { PlanMark } from "#app/_ui/drawing/level-plan/plan-mark.tsx";
import { fitView, toScreen } from "#app/_ui/drawing/level-plan/plan-view.ts";
import { useIsPrinting } from "../state/use-is-printing.ts";

export type PrintedPlanProps = { readonly columns: readonly PlanColumn[]; readonly axes: readonly GridAxis[] };

/** A frame this wide, stretched to the width of the paper, makes the signs of a plan with few columns large enough to read. */
const LEAST_WIDTH = 560;
const MOST_WIDTH = 1500;
/** Wanted between two grid lines; below it no name fits. */
const BAY = 58;

/** Of a bay, so that neighbours keep apart. */
const SIGN_SHARE = 0.4;
const LEAST_SIGN = 20;
/** Under the lowest columns, for their names. */
const NAME_ROOM = 18;

const never = () => undefined;

/** The whole level for paper, however far the screen has been zoomed in; drawn only while printing. */
export function PrintedPlan({ columns, axes }: PrintedPlanProps) {
  if (!useIsPrinting()) return null;
  const bounds = boundsOf(columns, axes);
  const across = axes.filter(({ direction }) => direction === "x").length;
  const width = Math.min(MOST_WIDTH, Math.max(LEAST_WIDTH, across * BAY));
  const height = Math.round(width * Math.min(1.3, Math.max(0.45, (bounds.top - bounds.bottom) / (bounds.right - bounds.left))));
  const frame = { width, height };
  const view = fitView(bounds, frame);
  const least = Math.min(LEAST_SIGN, (width / Math.max(across, 1)) * SIGN_SHARE);
  const lines = { axes, view, frame, onPress: never };
  return (
    <div className="hidden border-2 border-ink print:block">
      <svg aria-hidden className="drawing w-full" viewBox={`0 0 ${width} ${height + NAME_ROOM}`}>
        <PlanLines {...lines} />
        {columns.map((column) => {
          const { x, y } = toScreen(view, frame, { x: column.x_mm, y: column.y_mm });
          return (
            <g key={column.id} transform={`translate(${x.toFixed(1)} ${y.toFixed(1)})`}>
              <PlanMark id={`printed ${column.id}`} column={column} scale={view.scale} least={least} isNamed={across * BAY <= MOST_WIDTH} isSelected={false} isInTabOrder={false} />
            </g>
          );
        })}
        <PlanBubbles {...lines} />
      </svg>
    </div>
  );
}
