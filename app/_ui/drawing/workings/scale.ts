import { round1 } from "../sheet/sheet-scale.ts";

/** From a value to its place on the drawing, in pixels. */
export type Scale = (value: number) => number;

/** A straight scale: `from` lies at `at`, `to` at `until`. */
export const linear = (from: number, to: number, at: number, until: number): Scale =>
  (value) => at + ((value - from) * (until - at)) / (to - from || 1);

/** Round values from 0 (or below) to `most`, no more than about `count`, stepping by 1, 2 or 5 of a decade. */
export function roundSteps(least: number, most: number, count: number): readonly number[] {
  const raw = (most - least) / Math.max(1, count);
  if (!(raw > 0)) return [least];
  const decade = 10 ** Math.floor(Math.log10(raw));
  const step = decade * ([1, 2, 5].find((part) => part * decade >= raw * (1 - 1e-9)) ?? 10);
  const first = Math.ceil(least / step - 1e-9);
  return Array.from({ length: Math.floor(most / step + 1e-9) - first + 1 }, (_, index) => Number(((first + index) * step).toPrecision(12)));
}

export type Point = { readonly x: number; readonly y: number };

export const pathThrough = (points: readonly Point[]): string =>
  points.map(({ x, y }, index) => `${index === 0 ? "M" : "L"}${round1(x)} ${round1(y)}`).join("");
