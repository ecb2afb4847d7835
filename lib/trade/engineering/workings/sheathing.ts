import type { Kilopascals, Metres } from "#lib/kernel/units.ts";
import type { Result } from "#lib/kernel/result.ts";
import type { FaceGrain, PlyGrade, PlyThickness } from "../sheathing/apa-sections.ts";
import type { Board } from "../sheathing/sheathing.ts";
import type { Refusal, Working } from "../working.ts";

/** own: a supplier's permissible values per metre. apa: US concrete-form plywood by its published section properties. */
export type BoardChoice =
  | { readonly kind: "own"; readonly board: Board }
  | {
      readonly kind: "apa";
      readonly thickness: PlyThickness;
      readonly grade: PlyGrade;
      /** Of the face grain: across the supports (strong way) or along them. */
      readonly grain: FaceGrain;
      /** Forms used again and again lose the short-load factor of 1.25. */
      readonly reused: boolean;
    };

export type SheathingInput = {
  readonly board: BoardChoice;
  readonly pressure: Kilopascals;
  /** Centre to centre of the supports. */
  readonly centres: Metres;
  /** 1, 2, or 3 for three and more. */
  readonly spans: 1 | 2 | 3;
  readonly supportWidth: Metres;
  /** Loaded board beyond the centre of the outer support. */
  readonly overhang: Metres;
  /** 270 stands for span / 270. */
  readonly deflectionRatio: number;
};

export type SheathingUse = {
  readonly what: "bending" | "shear" | "deflection";
  /** Pressure at which this limit is reached. */
  readonly allowedPressure: Kilopascals;
  readonly utilisation: number;
};

export type SheathingAnswer = {
  readonly passes: boolean;
  readonly uses: readonly SheathingUse[];
  readonly governs: SheathingUse["what"];
  /** The largest pressure that this board on these supports carries. */
  readonly allowedPressure: Kilopascals;
  readonly working: readonly Working[];
};

export type SheathingWorking = (input: SheathingInput) => Result<SheathingAnswer, Refusal>;
