import { mm } from "#lib/kernel/units.ts";
import type { Millimetres, Quantity } from "#lib/kernel/units.ts";
import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import { refusal } from "../working.ts";
import type { Refusal } from "../working.ts";
import { leastSquares } from "./least-squares.ts";
import type { Equation } from "./least-squares.ts";

export type MillimetresPerMetre = Quantity<"mm/m">;

/** A and C are the faces across the column's width, A at +y; B at +x, C at −y, D at −x: lettered clockwise on plan. */
export type PlumbFace = "A" | "B" | "C" | "D";

/** How far a face stands outside (+) or inside (−) its right place, `along` to the right (x) or up (y) on plan from its centre line. */
export type FaceReading = { readonly face: PlumbFace; readonly along: Millimetres; readonly offset: Millimetres };

export type LevelReadings = {
  /** Above the foot of the form. */
  readonly height: Millimetres;
  readonly faces: readonly FaceReading[];
  /** Inside, corner CD to AB (rising to the right on plan) and BC to DA. */
  readonly diagonals: { readonly cdToAb: Millimetres; readonly bcToDa: Millimetres } | null;
};

export type LevelFit = {
  readonly x: Millimetres;
  readonly y: Millimetres;
  /** Anticlockwise on plan; null where the readings do not tell. */
  readonly turn: MillimetresPerMetre | null;
  /** By how much the angle at corners AB and CD is under a right angle; null where the readings do not tell. */
  readonly outOfSquare: MillimetresPerMetre | null;
  /** Root mean square of what the fit leaves over. */
  readonly residual: Millimetres;
};

/** Turn of the faces across (A, C), then of those along (B, D), in mm/m: equal for a square box, apart by the out-of-square. */
const UNKNOWNS = { full: 4, rigid: 3, moved: 2 } as const;
type Model = keyof typeof UNKNOWNS;

/**
 * Equation of one reading in x, y, turn and out-of-square. A face across the width whose box is turned by t (mm/m) and out of square by g takes
 * t + g / 2, a face along its depth t - g / 2: the angle at AB closes by g.
 */
function faceEquation({ face, along, offset }: FaceReading): Equation {
  const metres = along / 1000;
  switch (face) {
    case "A": return { coefficients: [0, 1, metres, metres / 2], value: offset };
    case "C": return { coefficients: [0, -1, -metres, -metres / 2], value: offset };
    case "B": return { coefficients: [1, 0, -metres, metres / 2], value: offset };
    case "D": return { coefficients: [-1, 0, metres, -metres / 2], value: offset };
  }
}

/** With the angle at AB under a right angle by g (mm/m) the diagonal to AB is the longer one, by this times g. */
const diagonalLever = (width: number, depth: number): number => (2 * width * depth) / Math.hypot(width, depth) / 1000;

const fitModel = (equations: readonly Equation[], model: Model): readonly number[] | null =>
  leastSquares(equations.map(({ coefficients, value }) => ({ coefficients: coefficients.slice(0, UNKNOWNS[model]), value })));

/**
 * Where the form stands on plan at one level.
 *
 * Formula: least squares of offset = n . (d + turn) over all readings, the box turned by t and out of square by g; diagonals: difference =
 *   2 w d g / diagonal. What the readings cannot tell is left out: first g, then t.
 * Parameters: readings, offsets [mm] outwards from the right place at places along the face [mm], diagonals [mm]; width and depth [mm], over 0.
 * Result: x, y [mm], turn and out-of-square [mm/m], residual [mm].
 * Limits: readings on one pair of faces only do not tell both x and y and are refused. Small angles: offsets over 300 mm are refused by
 *   `plumbWorking`.
 * Example: face A: 4 mm at -200 and 6 mm at +200; face B: 3 mm at 0: y = 5 mm, x = 3 mm, turn 5 mm/m.
 * Source: rigid body on plan, small turns; method of least squares, equations of Gauss.
 */
export function fitLevel(readings: LevelReadings, width: Millimetres, depth: Millimetres): Result<LevelFit, Refusal> {
  const { diagonals } = readings;
  const lever = diagonalLever(width, depth);
  const square: readonly Equation[] = diagonals === null ? [] : [{ coefficients: [0, 0, 0, lever], value: diagonals.cdToAb - diagonals.bcToDa }];
  const alone = (square[0]?.value ?? Number.NaN) / lever;
  for (const model of ["full", "rigid", "moved"] as const) {
    const equations = [...readings.faces.map(faceEquation), ...(model === "full" ? square : [])];
    const found = fitModel(equations, model);
    if (found === null) continue;
    const [x, y, turn, outOfSquare = Number.isNaN(alone) ? null : alone] = found;
    const left = equations.map(({ coefficients, value }) => value - found.reduce((sum, unknown, index) => sum + unknown * (coefficients[index] ?? 0), 0));
    return ok({
      x: mm(x ?? 0),
      y: mm(y ?? 0),
      turn: (turn ?? null) as MillimetresPerMetre | null,
      outOfSquare: outOfSquare as MillimetresPerMetre | null,
      residual: mm(Math.sqrt(left.reduce((sum, one) => sum + one * one, 0) / left.length)),
    });
  }
  return fail(refusal({ limit: `faces read at ${readings.height} mm`, given: [...new Set(readings.faces.map((reading) => reading.face))].join(", ") || "none", allowed: "one of A and C, and one of B and D", source: "input", message: "Read two faces at right angles." }));
}
