import { kPa, m } from "#lib/kernel/units.ts";
import { KPA_PER_PSF } from "#lib/kernel/us-units.ts";
import type { FaceGrain, PlyGrade, PlyThickness } from "#lib/trade/engineering/sheathing/apa-sections.ts";
import { sheathingWorking, type SheathingAnswer } from "#lib/trade/engineering/workings/sheathing.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";

export type ApaBoard = { readonly thickness: PlyThickness; readonly grade: PlyGrade; readonly grain: FaceGrain };

/** Span rule of the tables: across the supports three spans; along them three up to 16 in., two from the 20 in. column on. Supports 1-1/2 in. wide. */
export const tableAnswer = (board: ApaBoard, centres: number, ratio: 270 | 360): SheathingAnswer =>
  valueOf(
    sheathingWorking({
      board: { kind: "apa", ...board, reused: false },
      pressure: kPa(1),
      centres: m(centres * 0.0254),
      spans: board.grain === "across" || centres <= 16 ? 3 : 2,
      supportWidth: m(1.5 * 0.0254),
      overhang: m(0),
      deflectionRatio: ratio,
    }),
  );

/** In psf. */
export const tablePressure = (board: ApaBoard, centres: number, ratio: 270 | 360): number => tableAnswer(board, centres, ratio).allowedPressure / KPA_PER_PSF;
