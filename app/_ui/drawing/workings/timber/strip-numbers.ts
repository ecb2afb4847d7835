import { linear, type Scale } from "../scale.ts";

export type StripGiven = { readonly spans: 1 | 2 | 3; readonly centresMm: number; readonly supportWidthMm: number; readonly overhangMm: number };
export type StripNumbers = {
  /** From millimetres along the strip, 0 at the first support's centre. */
  readonly toX: Scale;
  readonly supports: readonly { readonly x: number; readonly width: number }[];
  readonly from: number;
  readonly to: number;
};

/** The board over its supports at one scale along; spans all equal, the overhang beyond the first support. */
export function stripNumbers({ spans, centresMm, supportWidthMm, overhangMm }: StripGiven, left: number, right: number): StripNumbers {
  const start = -Math.max(overhangMm, supportWidthMm / 2);
  const end = spans * centresMm + supportWidthMm / 2;
  const toX = linear(start, end, left, right);
  const width = toX(supportWidthMm) - toX(0);
  return {
    toX, from: toX(-overhangMm), to: toX(spans * centresMm),
    supports: Array.from({ length: spans + 1 }, (_, index) => ({ x: toX(index * centresMm) - width / 2, width })),
  };
}
