import type { Kilopascals, Metres } from "#lib/kernel/units.ts";
import { kPa } from "#lib/kernel/units.ts";
import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import { KPA_PER_PSF, MM_PER_INCH } from "#lib/kernel/us-units.ts";
import { APA_SOURCE, apaOverhangPressures, apaPressures } from "../sheathing/apa-pressure.ts";
import { apaSection, apaStresses } from "../sheathing/apa-sections.ts";
import type { FaceGrain, Inches, PlyGrade, PlyThickness } from "../sheathing/apa-sections.ts";
import { sheathing } from "../sheathing/sheathing.ts";
import type { Board } from "../sheathing/sheathing.ts";
import { refusal, term } from "../working.ts";
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

type Pressures = Readonly<Record<SheathingUse["what"], number>>;

function answerOf(input: SheathingInput, allowed: Pressures, working: readonly Working[]): SheathingAnswer {
  const uses = (["bending", "shear", "deflection"] as const).map((what) => ({ what, allowedPressure: kPa(allowed[what]), utilisation: input.pressure / allowed[what] }));
  const worst = uses.reduce((a, b) => (b.utilisation > a.utilisation ? b : a));
  return { passes: worst.utilisation <= 1, uses, governs: worst.what, allowedPressure: worst.allowedPressure, working };
}

function invalid(input: SheathingInput): Refusal | null {
  const bounds: readonly (readonly [string, number, number, number])[] = [
    ["pressure (kPa)", input.pressure, Number.MIN_VALUE, 1000],
    ["centres of supports (m)", input.centres, 0.02, 3],
    ["support width (m)", input.supportWidth, 0.001, 1],
    ["overhang (m)", input.overhang, 0, 2],
    ["deflection ratio", input.deflectionRatio, 50, 2000],
  ];
  const broken = bounds.find(([, given, least, most]) => !(given >= least && given <= most));
  if (broken === undefined) return null;
  const [limit, given, least, most] = broken;
  return refusal({ limit, given, allowed: least === Number.MIN_VALUE ? `over 0, up to ${most}` : `${least} to ${most}`, source: "input", message: "Correct the strip." });
}

function byOwnBoard(input: SheathingInput, board: Board): Result<SheathingAnswer, Refusal> {
  const { pressure, centres, spans, supportWidth, overhang, deflectionRatio } = input;
  const answer = sheathing({ board, pressure, centres, spans, supportWidth, overhang, ratio: deflectionRatio });
  if (!answer.ok) return answer;
  const { bendingUse, shearUse, deflectionUse, working } = answer.value;
  return ok(answerOf(input, { bending: pressure / bendingUse, shear: pressure / shearUse, deflection: pressure / deflectionUse }, [working]));
}

function byApa(input: SheathingInput, board: Extract<BoardChoice, { kind: "apa" }>): Result<SheathingAnswer, Refusal> {
  const section = apaSection(board.thickness, board.grade, board.grain);
  if (!section.ok) return section;
  const inches = (metres: number) => ((metres * 1000) / MM_PER_INCH) as Inches;
  const stresses = apaStresses(board.grade, board.reused);
  const strip = { section: section.value, stresses, grain: board.grain, centres: inches(input.centres), supportWidth: inches(input.supportWidth), spans: input.spans, deflectionRatio: input.deflectionRatio };
  const spans = apaPressures(strip);
  if (!spans.ok) return spans;
  const free = apaOverhangPressures(section.value, stresses, inches(input.overhang), strip.supportWidth);
  const least = { bending: Math.min(spans.value.bending, free.bending), shear: Math.min(spans.value.shear, free.shear), deflection: spans.value.deflection };
  const working: Working = {
    title: `US concrete-form plywood ${board.thickness} in., ${board.grade}, face grain ${board.grain} the supports`,
    inputs: [
      term("centres l1", strip.centres, "in"), term("support width", strip.supportWidth, "in"), term("spans", input.spans, ""), term("deflection limit l1 /", input.deflectionRatio, ""),
      term("I", section.value.inertia, "in4/ft"), term("KS", section.value.sectionModulus, "in3/ft"), term("Ib/Q", section.value.rollingShear, "in2/ft"),
      term("F_b", stresses.bending, "psi"), term("F_s", stresses.shear, "psi"), term("E", stresses.stiffness, "psi"), term("E_e", stresses.shearStiffness, "psi"),
    ],
    formula: "w_b = k_b F_b KS / l1^2; w_s = k_s F_s (Ib/Q) / l2; w_d from bending and shear deflection",
    steps: [term("w_b", least.bending, "psf"), term("w_s", least.shear, "psf"), term("w_d", least.deflection, "psf")],
    result: term("allowed pressure", Math.min(least.bending, least.shear, least.deflection), "psf"),
    source: APA_SOURCE,
  };
  return ok(answerOf(input, { bending: least.bending * KPA_PER_PSF, shear: least.shear * KPA_PER_PSF, deflection: least.deflection * KPA_PER_PSF }, [working]));
}

/**
 * A board on equal spans under one pressure: what each limit allows, and which governs. Permissible-stress format.
 *
 * Formula: a supplier's board by `sheathing`; US concrete-form plywood by `apaPressures` and `apaOverhangPressures`.
 * Parameters: input with pressure over 0 to 1000 [kPa], centres 0.02 to 3 [m], support width 0.001 to 1 [m], overhang 0 to 2 [m], deflection ratio 50 to 2000 [-].
 * Result: pressures at which each limit is reached [kPa], uses [-], the least of them and its name.
 * Limits: refused outside those ranges, where the supports would touch, and for thicknesses or grades the table does not hold. The deflection of a free
 *   end is not limited.
 * Example: 5/8 in. class I across, 14 in. centres, 1.5 in. supports, n = 360: 387.9 psf = 18.57 kPa, by deflection.
 * Source: elastic theory of the strip; APA concrete-form plywood as in Peurifoy and Oberlender, 4th ed. (2010).
 */
export const sheathingWorking: SheathingWorking = (input) => {
  const wrong = invalid(input);
  if (wrong !== null) return fail(wrong);
  return input.board.kind === "own" ? byOwnBoard(input, input.board.board) : byApa(input, input.board);
};
