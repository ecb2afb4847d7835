import { useEffect, useMemo, useRef, useState, type RefObject } from "react";
import type { Bounds } from "./plan-model.ts";
import { bringIntoSight, fitView, keepOn, panBy, zoomAt, type Frame, type PlanView, type Point } from "./plan-view.ts";
import { usePlanGestures } from "./use-plan-gestures.ts";

const STEP = 1.5;
const LEAST_HEIGHT = 360;
const MOST_HEIGHT = 680;

export type PlanViewState = {
  readonly view: PlanView;
  readonly frame: Frame;
  readonly isFitted: boolean;
  readonly fit: () => void;
  readonly zoomIn: () => void;
  readonly zoomOut: () => void;
  readonly show: (at: Point) => void;
  /** True when the last press moved the plan, so that the click after it picks nothing. */
  readonly wasDragged: () => boolean;
};

/** Where the plan is looked at from: fits until someone zooms, follows the width of its place. */
export function usePlanView(bounds: Bounds, box: RefObject<HTMLElement | null>): PlanViewState {
  const width = useWidth(box);
  const [chosen, setChosen] = useState<PlanView | null>(null);
  const frame = useMemo(() => {
    const tall = (width * (bounds.top - bounds.bottom)) / Math.max(bounds.right - bounds.left, 1);
    return { width, height: Math.round(Math.min(Math.max(tall, LEAST_HEIGHT), MOST_HEIGHT)) };
  }, [bounds, width]);
  const fitted = useMemo(() => fitView(bounds, frame), [bounds, frame]);
  const view = chosen ?? fitted;
  const latest = useRef({ view, frame, bounds, least: fitted.scale });
  useEffect(() => { latest.current = { view, frame, bounds, least: fitted.scale }; });

  const actions = useMemo(() => {
    const change = (next: (view: PlanView) => PlanView) => {
      const { view: from, bounds: sheet, least } = latest.current;
      const to = keepOn(next(from), sheet);
      latest.current = { ...latest.current, view: to };
      setChosen(to.scale <= least * 1.001 ? null : to);
    };
    const zoom = (factor: number, about?: Point) => change((from) => {
      const { frame: now, least } = latest.current;
      return zoomAt(from, now, about ?? { x: now.width / 2, y: now.height / 2 }, factor, least);
    });
    return {
      fit: () => setChosen(null),
      zoom,
      pan: (dx: number, dy: number) => change((from) => panBy(from, dx, dy)),
      show: (at: Point) => change((from) => bringIntoSight(from, latest.current.frame, at)),
      zoomIn: () => zoom(STEP),
      zoomOut: () => zoom(1 / STEP),
    };
  }, []);
  const wasDragged = usePlanGestures(box, actions, chosen !== null);
  return { view, frame, isFitted: chosen === null, fit: actions.fit, zoomIn: actions.zoomIn, zoomOut: actions.zoomOut, show: actions.show, wasDragged };
}

function useWidth(box: RefObject<HTMLElement | null>): number {
  const [width, setWidth] = useState(800);
  useEffect(() => {
    const element = box.current;
    if (!element) return;
    const watch = new ResizeObserver(() => setWidth(Math.max(240, element.clientWidth)));
    watch.observe(element);
    return () => watch.disconnect();
  }, [box]);
  return width;
}
