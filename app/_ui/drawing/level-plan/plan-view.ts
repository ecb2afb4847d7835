import type { Bounds } from "./plan-model.ts";

/** In pixels. */
export type Frame = { readonly width: number; readonly height: number };
/** What is at the middle of the frame, in millimetres, and how many pixels one millimetre takes. */
export type PlanView = { readonly x: number; readonly y: number; readonly scale: number };
export type Point = { readonly x: number; readonly y: number };

/** Kept free along the top and the left for the names of the grid lines. */
export const GRID_MARGIN = 40;
/** Kept free all round for the signs and names of the outermost columns. */
const EDGE = 24;

export function fitView(bounds: Bounds, frame: Frame): PlanView {
  const scale = Math.min(
    (frame.width - GRID_MARGIN - 2 * EDGE) / Math.max(bounds.right - bounds.left, 1),
    (frame.height - GRID_MARGIN - 2 * EDGE) / Math.max(bounds.top - bounds.bottom, 1),
  );
  const shift = GRID_MARGIN / 2 / scale;
  return { x: (bounds.left + bounds.right) / 2 - shift, y: (bounds.bottom + bounds.top) / 2 + shift, scale };
}

export const toScreen = (view: PlanView, frame: Frame, at: Point): Point => ({
  x: frame.width / 2 + (at.x - view.x) * view.scale,
  y: frame.height / 2 - (at.y - view.y) * view.scale,
});

/** Grows about a point of the frame, which keeps its place. `least` is the scale at which all is in sight. */
export function zoomAt(view: PlanView, frame: Frame, about: Point, factor: number, least: number): PlanView {
  const scale = Math.min(Math.max(view.scale * factor, least), least * 40);
  const dx = (about.x - frame.width / 2) * (1 / view.scale - 1 / scale);
  const dy = (about.y - frame.height / 2) * (1 / view.scale - 1 / scale);
  return { x: view.x + dx, y: view.y - dy, scale };
}

export const panBy = (view: PlanView, dx: number, dy: number): PlanView => ({
  ...view,
  x: view.x - dx / view.scale,
  y: view.y + dy / view.scale,
});

/** Never leaves the sheet: the middle of the frame stays over what is drawn. */
export const keepOn = (view: PlanView, bounds: Bounds): PlanView => ({
  ...view,
  x: Math.min(Math.max(view.x, bounds.left), bounds.right),
  y: Math.min(Math.max(view.y, bounds.bottom), bounds.top),
});

/** Moves only as far as needed to bring a point clear of the frame's edge. */
export function bringIntoSight(view: PlanView, frame: Frame, at: Point): PlanView {
  const { x, y } = toScreen(view, frame, at);
  const edge = 36;
  const dx = Math.max(0, GRID_MARGIN + edge - x) - Math.max(0, x - (frame.width - edge));
  const dy = Math.max(0, GRID_MARGIN + edge - y) - Math.max(0, y - (frame.height - edge));
  return panBy(view, dx, dy);
}
