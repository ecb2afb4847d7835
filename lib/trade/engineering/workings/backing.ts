import { kN, kN_per_m, m, mm } from "#lib/kernel/units.ts";
import type { Kilonewtons, Metres, Millimetres } from "#lib/kernel/units.ts";
import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import type { LoadCorner } from "../backing/beam-pieces.ts";
import { beamSamples } from "../backing/beam-samples.ts";
import type { BeamSample } from "../backing/beam-samples.ts";
import { heldBeam, worstOfBeam } from "../backing/held-beam.ts";
import type { BeamWorst } from "../backing/held-beam.ts";
import { timberCapacity } from "../backing/timber-capacity.ts";
import type { TimberCapacity } from "../backing/timber-capacity.ts";
import type { BackingTimberInput } from "../backing/timber-choice.ts";
import { timberValues } from "../backing/timber-values.ts";
import { loadUp } from "../clamps/clamp-demands.ts";
import type { PressureValueKind } from "../pour-conditions.ts";
import { pressureEnvelope } from "../pressure-envelope.ts";
import { loadFactor } from "../safety-format.ts";
import type { SafetyFormat } from "../safety-format.ts";
import { refusal, term } from "../working.ts";
import type { Refusal, Working } from "../working.ts";
import type { PressureInput } from "./pressure.ts";

/** corners: straight lines of load along the beam, from its foot. pressure: the pour's envelope times the share of the face. */
export type BackingLoad =
  | { readonly kind: "corners"; readonly corners: readonly LoadCorner[] }
  | { readonly kind: "pressure"; readonly pressure: PressureInput; readonly share: Metres };

export type BackingInput = {
  readonly timber: BackingTimberInput;
  readonly format: SafetyFormat;
  readonly load: BackingLoad;
  readonly length: Millimetres;
  /** Of the clamps above the foot, ascending, two or more. */
  readonly supports: readonly Millimetres[];
  readonly deflectionRatio: number;
};

export type BackingUse = {
  readonly what: "bending" | "shear" | "deflection";
  readonly demand: number;
  readonly capacity: number;
  readonly unit: string;
  readonly utilisation: number;
  /** Above the foot. */
  readonly at: Millimetres;
};

export type BackingAnswer = {
  readonly passes: boolean;
  readonly uses: readonly BackingUse[];
  readonly reactions: readonly { readonly at: Millimetres; readonly force: Kilonewtons }[];
  readonly samples: readonly BeamSample[];
  readonly working: readonly Working[];
};

export type BackingWorking = (input: BackingInput) => Result<BackingAnswer, Refusal>;

/**
 * Capacity of the timber in the format asked for, with how it came about.
 *
 * Formula: `timberCapacity` of the values of `timberValues`.
 * Parameters: input with breadth and depth [mm] and the choice of its values [N/mm2]; format.
 * Result: moment [kN.m], shear [kN], stiffness [kN.m2], depth [m].
 * Limits: refused as by `timberValues` (values of the other format, factors out of range) and `timberCapacity` (values of 0 or less).
 * Example: C18, k_mod 0.7, gamma_M 1.3, 94 x 44 mm: 9.692 x 94 x 44^2 / 6e6 = 0.2940 kN.m.
 * Source: elastic theory of the rectangular section; values as of their standard.
 */
export function timberInFormat(input: BackingTimberInput, format: SafetyFormat): Result<{ readonly capacity: TimberCapacity; readonly working: Working }, Refusal> {
  const values = timberValues(input.timber, input.depth, format);
  if (!values.ok) return values;
  const { bendingStress, shearStress, modulus, working } = values.value;
  const capacity = timberCapacity({ breadth: input.breadth, depth: input.depth, bendingStress, shearStress, modulus });
  if (!capacity.ok) return capacity;
  const { moment, shear, stiffness } = capacity.value;
  const steps = [term("b", input.breadth, "mm"), term("d", input.depth, "mm"), ...working.steps, term("M", moment, "kN.m"), term("V", shear, "kN"), term("EI", stiffness, "kN.m2")];
  return ok({ capacity: capacity.value, working: { ...working, steps } });
}

type Load = { readonly corners: readonly LoadCorner[]; readonly valueKind: PressureValueKind; readonly falls: boolean; readonly working: readonly Working[] };

function loadOf(load: BackingLoad): Result<Load, Refusal> {
  if (load.kind === "corners") {
    const broken = load.corners.find(({ at, load: w }) => !(Number.isFinite(at) && w >= 0 && w <= 1000));
    if (broken !== undefined || load.corners.length < 2)
      return fail(refusal({ limit: "load corners", given: broken?.load ?? load.corners.length, allowed: "two or more, each from 0 to 1000 kN/m", source: "input", message: "Correct the load." }));
    const falls = load.corners.every((corner, index) => index === 0 || corner.load <= (load.corners[index - 1]?.load ?? 0));
    return ok({ corners: load.corners, valueKind: "service", falls, working: [] });
  }
  if (!(load.share > 0 && load.share <= 3)) return fail(refusal({ limit: "share of the face (m)", given: load.share, allowed: "over 0, up to 3", source: "input", message: "Correct the share." }));
  const envelope = pressureEnvelope(load.pressure.pour, load.pressure.form);
  if (!envelope.ok) return envelope;
  const corners = loadUp(envelope.value).map((corner) => ({ at: corner.at, load: kN_per_m(corner.load * load.share) }));
  return ok({ corners, valueKind: envelope.value.valueKind, falls: true, working: envelope.value.working });
}

/** Straight lines between the corners, nothing outside them. */
function loadAt(corners: readonly LoadCorner[], place: number): number {
  const next = corners.findIndex((corner) => corner.at >= place);
  const [a, b] = [corners[next - 1], corners[next]];
  if (b === undefined) return 0;
  if (a === undefined || b.at === a.at) return b.at === place ? b.load : 0;
  return a.load + ((b.load - a.load) * (place - a.at)) / (b.at - a.at);
}

function usesOf(worst: BeamWorst, capacity: TimberCapacity, factor: number, ratio: number): readonly BackingUse[] {
  const use = (what: BackingUse["what"], demand: number, limit: number, unit: string, at: number): BackingUse => ({ what, demand, capacity: limit, unit, utilisation: demand / limit, at: mm(at * 1000) });
  return [
    use("bending", worst.moment * factor, capacity.moment, "kN.m", worst.momentAt),
    use("shear", worst.shear * factor, capacity.shear, "kN", worst.shearAt),
    use("deflection", worst.bend * 1000, 1000 / ratio, "mm/m", worst.bendAt),
  ];
}

function invalid(input: BackingInput): Refusal | null {
  const refuse = (limit: string, given: number, allowed: string) => refusal({ limit, given, allowed, source: "input", message: "Correct the beam." });
  if (!(input.length >= 100 && input.length <= 20_000)) return refuse("length of the timber (mm)", input.length, "100 to 20000");
  if (!(input.supports.length >= 2 && input.supports.length <= 60)) return refuse("clamps", input.supports.length, "2 to 60");
  if (!(input.deflectionRatio >= 50 && input.deflectionRatio <= 2000)) return refuse("deflection ratio", input.deflectionRatio, "50 to 2000");
  const [first] = input.supports;
  return first !== undefined && first >= 0 ? null : refuse("lowest clamp (mm)", first ?? Number.NaN, "0 or more");
}

/**
 * One backing timber over its clamps: every force, every use, and the lines to draw.
 *
 * Formula: `heldBeam` under the load; strength demands times the load factor over the capacity, deflection over its span against 1 / ratio.
 * Parameters: input with length 100 to 20 000 [mm], two to 60 supports ascending [mm], load up to 1000 [kN/m] or pressure times a share up to 3 [m],
 *   deflection ratio 50 to 2000 [-].
 * Result: uses [-] at heights [mm], reactions [kN], and samples of moment [kN.m], shear [kN] and deflection [mm].
 * Limits: refused outside those ranges, by the timber's own limits, by the pressure method and by the safety format. Shear is taken one depth from the
 *   clamp only under loads that fall going up.
 * Example: 1600 mm over two clamps at its ends under 5 kN/m: 5 x 1.6^2 / 8 = 1.6 kN.m and 4 kN on each clamp.
 * Source: elastic beam theory; shear at one depth: Peurifoy and Oberlender, 4th ed. (2010), p. 153.
 */
export const backingWorking: BackingWorking = (input) => {
  const wrong = invalid(input);
  if (wrong !== null) return fail(wrong);
  const timber = timberInFormat(input.timber, input.format);
  if (!timber.ok) return timber;
  const load = loadOf(input.load);
  if (!load.ok) return load;
  const factor = loadFactor(input.format, load.value.valueKind);
  if (!factor.ok) return factor;
  const { capacity } = timber.value;
  const { corners, falls } = load.value;
  const length = m(input.length / 1000);
  const solved = heldBeam({ length, supports: input.supports.map((at) => m(at / 1000)), load: corners, stiffness: capacity.stiffness });
  if (!solved.ok) return solved;
  const { beam, held } = solved.value;
  const worst = worstOfBeam(beam, (place) => loadAt(corners, place), falls ? capacity.depth : m(0));
  const uses = usesOf(worst, capacity, factor.value, input.deflectionRatio);
  const forces = input.supports.map((at, index) => ({ at, force: kN(Math.max(0, beam.reactions[held.indexOf(index)] ?? 0)) }));
  const carrying = held.map((index, place) => ({ at: m((input.supports[index] ?? 0) / 1000), force: kN(beam.reactions[place] ?? 0) }));
  const samples = beamSamples(length, carrying, corners, capacity.stiffness, 120);
  const working: Working = {
    title: `Backing timber over ${input.supports.length} clamps, ${input.format.kind} format`,
    inputs: [term("length", input.length, "mm"), term("clamps", input.supports.join(", "), "mm"), term("load factor on strength", factor.value, ""), term("deflection limit L /", input.deflectionRatio, "")],
    formula: "continuous beam by the stiffness method under straight lines of load",
    steps: uses.map((use) => term(`${use.what}, ${Math.round(use.at)} mm up, of ${use.capacity.toPrecision(4)}`, use.demand, use.unit)),
    result: term("largest use", Math.max(...uses.map((use) => use.utilisation)), ""),
    source: "Elastic beam theory; shear at one depth: Peurifoy and Oberlender, Formwork for Concrete Structures, 4th ed. (2010), p. 153",
  };
  return ok({ passes: uses.every((use) => use.utilisation <= 1), uses, reactions: forces, samples, working: [...load.value.working, timber.value.working, working] });
};
