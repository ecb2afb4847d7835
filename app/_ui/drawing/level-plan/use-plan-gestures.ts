import { useEffect, useRef, type RefObject } from "react";
import type { Point } from "./plan-view.ts";

type Moves = { readonly pan: (dx: number, dy: number) => void; readonly zoom: (factor: number, about: Point) => void };

/** A press that wanders less than this is still a tap, gloves allowed for. */
const TAP_SLACK = 8;

/** Wheel, drag and pinch. One finger scrolls the page while all is in sight and moves the plan once it is larger. */
export function usePlanGestures(box: RefObject<HTMLElement | null>, moves: Moves, isZoomed: boolean): () => boolean {
  const dragged = useRef(false);
  const zoomed = useRef(isZoomed);
  useEffect(() => { zoomed.current = isZoomed; });
  useEffect(() => {
    const element = box.current;
    if (!element) return;
    const undo = new AbortController();
    const { signal } = undo;
    const fingers = new Map<number, Point>();
    const placeOf = (event: MouseEvent): Point => {
      const { left, top } = element.getBoundingClientRect();
      return { x: event.clientX - left, y: event.clientY - top };
    };
    let travelled = 0;

    const wheel = (event: WheelEvent) => {
      const isMeant = event.ctrlKey || event.metaKey || element.contains(document.activeElement);
      if (!isMeant) return;
      event.preventDefault();
      moves.zoom(Math.exp(-event.deltaY * (event.ctrlKey ? 0.01 : 0.0015)), placeOf(event));
    };
    const down = (event: PointerEvent) => {
      if (fingers.size === 0) [travelled, dragged.current] = [0, false];
      fingers.set(event.pointerId, placeOf(event));
    };
    const move = (event: PointerEvent) => {
      const from = fingers.get(event.pointerId);
      if (!from) return;
      const to = placeOf(event);
      const other = [...fingers].find(([id]) => id !== event.pointerId)?.[1];
      travelled += Math.hypot(to.x - from.x, to.y - from.y);
      fingers.set(event.pointerId, to);
      if (other) {
        const apart = Math.hypot(from.x - other.x, from.y - other.y);
        moves.zoom(Math.hypot(to.x - other.x, to.y - other.y) / Math.max(apart, 1), { x: (to.x + other.x) / 2, y: (to.y + other.y) / 2 });
        dragged.current = true;
      } else if (travelled > TAP_SLACK && (zoomed.current || event.pointerType === "mouse")) {
        moves.pan(to.x - from.x, to.y - from.y);
        dragged.current = true;
      }
    };
    const up = (event: PointerEvent) => { fingers.delete(event.pointerId); };

    element.addEventListener("wheel", wheel, { passive: false, signal });
    element.addEventListener("pointerdown", down, { signal });
    window.addEventListener("pointermove", move, { signal });
    window.addEventListener("pointerup", up, { signal });
    window.addEventListener("pointercancel", up, { signal });
    return () => undo.abort();
  }, [box, moves]);
  return () => dragged.current;
}
