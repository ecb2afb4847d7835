import { choiceOf, isTicked, numberOf, numberOrNull, textOf, type Entries } from "#app/_ui/form/read-form.ts";
import { EN_338_CLASSES } from "#lib/trade/engineering/backing/timber-choice.ts";
import { CEMENT_GROUPS, CONSISTENCY_CLASSES, PRESSURE_METHODS, WORKING_ONLY_METHODS } from "#lib/trade/engineering/pour-conditions.ts";
import type { PressureGiven } from "./pour-fields.tsx";
import type { FormatGiven, TimberGiven } from "./timber-words.ts";

export const TIMBER_KINDS = ["own", "en-338", "nds", "bs-5268"] as const;

/** The pour and its form as the contract of the pressure wants them. */
export function readPressure(entries: Entries, at = ""): PressureGiven {
  const number = (name: string) => numberOf(entries, `${at}${name}`);
  const ticked = (name: string) => isTicked(entries, `${at}pour.${name}`);
  const consistency = textOf(entries, `${at}pour.consistency`);
  return {
    pour: {
      method: choiceOf(entries, `${at}pour.method`, [...PRESSURE_METHODS, ...WORKING_ONLY_METHODS]),
      concrete_density_kN_per_m3: number("pour.concrete_density_kN_per_m3"), temperature_degC: number("pour.temperature_degC"), rise_rate_m_per_h: number("pour.rise_rate_m_per_h"),
      cement: choiceOf(entries, `${at}pour.cement`, CEMENT_GROUPS), retarder: ticked("retarder"), slump_mm: number("pour.slump_mm"), vibration_depth_mm: number("pour.vibration_depth_mm"),
      self_compacting: ticked("self_compacting"), external_vibration: ticked("external_vibration"),
      placing: choiceOf(entries, `${at}pour.placing`, ["from-top", "pumped-from-base"]),
      pour_height_mm: numberOrNull(entries, `${at}pour.pour_height_mm`),
      consistency: CONSISTENCY_CLASSES.find((known) => known === consistency) ?? null,
      setting_end_h: numberOrNull(entries, `${at}pour.setting_end_h`),
    },
    form: { height_mm: number("form.height_mm"), largest_side_mm: number("form.largest_side_mm") },
    batter_mm_per_m: numberOrNull(entries, `${at}batter_mm_per_m`) ?? 0,
  };
}

function readTimberValues(entries: Entries): TimberGiven["values"] {
  const number = (name: string) => numberOf(entries, `timber.values.${name}`);
  const kind = choiceOf(entries, "timber.values.kind", TIMBER_KINDS);
  switch (kind) {
    case "own":
      return { kind, bending_stress_N_per_mm2: number("bending_stress_N_per_mm2"), shear_stress_N_per_mm2: number("shear_stress_N_per_mm2"), modulus_N_per_mm2: number("modulus_N_per_mm2") };
    case "en-338":
      return { kind, strength_class: choiceOf(entries, "timber.values.strength_class", EN_338_CLASSES), k_mod: number("k_mod"), gamma_M: number("gamma_M") };
    case "nds": {
      const factor = (name: string) => number(`factors.${name}`);
      return {
        kind, bending_N_per_mm2: number("bending_N_per_mm2"), shear_N_per_mm2: number("shear_N_per_mm2"), modulus_N_per_mm2: number("modulus_N_per_mm2"),
        factors: {
          load_duration: factor("load_duration"), wet_bending: factor("wet_bending"), wet_shear: factor("wet_shear"), wet_modulus: factor("wet_modulus"),
          size: factor("size"), flat_use: factor("flat_use"), repetitive: factor("repetitive"),
        },
      };
    }
    case "bs-5268":
      return {
        kind, bending_N_per_mm2: number("bending_N_per_mm2"), shear_N_per_mm2: number("shear_N_per_mm2"), modulus_N_per_mm2: number("modulus_N_per_mm2"),
        wet: { bending: number("wet.bending"), shear: number("wet.shear"), modulus: number("wet.modulus") },
        duration: number("duration"), load_sharing: number("load_sharing"), depth_factor_in_shear: isTicked(entries, "timber.values.depth_factor_in_shear"),
      };
  }
}

export const readTimber = (entries: Entries): TimberGiven =>
  ({ breadth_mm: numberOf(entries, "timber.breadth_mm"), depth_mm: numberOf(entries, "timber.depth_mm"), values: readTimberValues(entries) });

export const readFormat = (entries: Entries): FormatGiven =>
  textOf(entries, "format.kind") === "partial-factor" ? { kind: "partial-factor", load_factor: numberOf(entries, "format.load_factor") } : { kind: "permissible-stress" };

/** A list posted under `name.0`, `name.1`, …; where its items have parts, `part` is one that each of them has. */
export function readList<Item>(entries: Entries, name: string, read: (at: string) => Item, part?: string): Item[] {
  const items: Item[] = [];
  const isGiven = (index: number) => entries.get(`${name}.${index}${part === undefined ? "" : `.${part}`}`) !== null;
  for (let index = 0; isGiven(index); index += 1) items.push(read(`${name}.${index}`));
  return items;
}
