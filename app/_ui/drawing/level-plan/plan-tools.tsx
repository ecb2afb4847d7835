import { Button } from "#app/_ui/control/button.tsx";
import type { PlanViewState } from "./use-plan-view.ts";

export type PlanToolsProps = { readonly plan: PlanViewState };

export function PlanTools({ plan }: PlanToolsProps) {
  return (
    <div className="no-print flex flex-wrap items-center gap-2 border-b border-ink p-2">
      <Button aria-label="Larger" onPress={plan.zoomIn}>+</Button>
      <Button aria-label="Smaller" isDisabled={plan.isFitted} onPress={plan.zoomOut}>−</Button>
      <Button isDisabled={plan.isFitted} onPress={plan.fit}>Show all</Button>
    </div>
  );
}
