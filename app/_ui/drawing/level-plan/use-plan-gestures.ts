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
    const listening = new AbortController();
    const { signal } = listening;
    const fingers = fingersOn(element, moves, dragged, zoomed);
    element.addEventListener("wheel", (event) => turnWheel(event, element, moves), { passive: false, signal });
    element.addEventListener("pointerdown", fingers.down, { signal });
    window.addEventListener("pointermove", fingers.move, { signal });
    window.addEventListener("pointerup", fingers.up, { signal });
    window.addEventListener("pointercancel", fingers.up, { signal });
    return () => listening.abort();
  }, [box, moves]);
  return () => dragged.current;
}

function placeOf(event: MouseEvent, element: HTMLElement): Point {
  const { left, top } = element.getBoundingClientRect();
  return { x: event.clientX - left, y: event.clientY - top };
}

/** The page keeps its wheel until the plan has been touched, or the person pinches a trackpad. */
function turnWheel(event: WheelEvent, element: HTMLElement, moves: Moves) {
  const isMeant = event.ctrlKey || event.metaKey || element.contains(document.activeElement);
  if (!isMeant) return;
  event.preventDefault();
  moves.zoom(Math.exp(-event.deltaY * (event.ctrlKey ? 0.01 : 0.0015)), placeOf(event, element));
}

type Flag = { current: boolean };

function fingersOn(element: HTMLElement, moves: Moves, dragged: Flag, zoomed: Flag) {
  const fingers = new Map<number, Point>();
  let travelled = 0;
  const down = (event: PointerEvent) => {
    if (fingers.size === 0) [travelled, dragged.current] = [0, false];
    fingers.set(event.pointerId, placeOf(event, element));
  };
  const move = (event: PointerEvent) => {
    const from = fingers.get(event.pointerId);
    if (!from) return;
    const to = placeOf(event, element);
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
  return { down, move, up };
}
