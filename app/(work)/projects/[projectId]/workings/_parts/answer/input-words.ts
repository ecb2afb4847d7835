import { quantityEdge, type TypedUnit } from "#app/_ui/value/quantity-edge.ts";
import { figureText, lengthFigure, quantityText, type Units } from "#app/_ui/value/format-quantity.ts";
import { significant } from "#app/_ui/value/working-words.ts";
import type { InputLine } from "../calculator.ts";
import type { PressureGiven } from "../fields/pour-fields.tsx";
import { CEMENTS, methodLabel, PLACING, READ_BY } from "../fields/pour-words.ts";
import { NDS_FACTORS, timberLabel, type FormatGiven, type TimberGiven } from "../fields/timber-words.ts";

const isNumber = (value: number): boolean => Number.isFinite(value);

/** A length as entered, with its unit. */
export const lengthWords = (valueMm: number, units: Units): string =>
  isNumber(valueMm) ? `${lengthFigure(valueMm, units)}${units === "us" ? "" : " mm"}` : "not given";

/** A quantity as entered. */
export function typedWords(value: number, unit: TypedUnit, units: Units): string {
  const edge = quantityEdge(unit, units);
  return isNumber(value) ? `${figureText(edge.toTyped(value), edge.places).replace(/(\.\d*?)0+$/, "$1").replace(/\.$/, "")} ${edge.unit}` : "not given";
}

const yesNo = (is: boolean): string => (is ? "yes" : "no");

export function pressureLines({ pour, form, batter_mm_per_m = 0 }: PressureGiven, units: Units): readonly InputLine[] {
  const reads = READ_BY[pour.method];
  const when = (isRead: boolean, line: InputLine): readonly InputLine[] => (isRead ? [line] : []);
  const { pour_height_mm, setting_end_h, consistency } = pour;
  return [
    ["Pressure by", methodLabel(pour.method)],
    ["Form height", lengthWords(form.height_mm, units)],
    ["Concrete height", pour_height_mm === null || pour_height_mm === undefined ? "to the top" : lengthWords(pour_height_mm, units)],
    ...when(reads.includes("side"), ["Largest side", lengthWords(form.largest_side_mm, units)]),
    ["Density", typedWords(pour.concrete_density_kN_per_m3, "kN/m3", units)],
    ...when(reads.includes("rate"), ["Rate of rise", typedWords(pour.rise_rate_m_per_h, "m/h", units)]),
    ...when(reads.includes("temperature"), ["Concrete temperature", typedWords(pour.temperature_degC, "degC", units)]),
    ...when(reads.includes("cement"), ["Cement", CEMENTS.find(({ value }) => value === pour.cement)?.label ?? ""]),
    ...when(reads.includes("retarder"), ["Retarder", yesNo(pour.retarder)]),
    ...when(reads.includes("slump"), ["Slump", lengthWords(pour.slump_mm, units)]),
    ...when(reads.includes("vibration"), ["Vibrator depth", lengthWords(pour.vibration_depth_mm, units)]),
    ...when(reads.includes("consistency"), ["Consistency class", consistency ?? "not given"]),
    ...when(reads.includes("setting-end"), ["Setting end tE", setting_end_h === null || setting_end_h === undefined ? "not given" : `${setting_end_h} h`]),
    ...when(reads.includes("self-compacting"), ["Self-compacting", yesNo(pour.self_compacting)]),
    ...when(reads.includes("external"), ["Vibrated from outside", yesNo(pour.external_vibration)]),
    ["Placed", PLACING.find(({ value }) => value === pour.placing)?.label ?? ""],
    ...when(batter_mm_per_m > 0, ["Batter", typedWords(batter_mm_per_m, "mm/m", units)]),
  ];
}

function valueWords(values: TimberGiven["values"], units: Units): string {
  const stress = (value: number) => typedWords(value, "N/mm2", units);
  switch (values.kind) {
    case "own": return `${stress(values.bending_stress_N_per_mm2)} bending, ${stress(values.shear_stress_N_per_mm2)} shear, E ${stress(values.modulus_N_per_mm2)}`;
    case "en-338": return `${values.strength_class}, k_mod ${values.k_mod}, γ_M ${values.gamma_M}`;
    case "nds":
      return `${stress(values.bending_N_per_mm2)} bending, ${stress(values.shear_N_per_mm2)} shear, E ${stress(values.modulus_N_per_mm2)}; ${NDS_FACTORS.map(([name, label]) => `${label} ${values.factors[name]}`).join(", ")}`;
    case "bs-5268":
      return `${stress(values.bending_N_per_mm2)} bending, ${stress(values.shear_N_per_mm2)} shear, E ${stress(values.modulus_N_per_mm2)}; K2 ${values.wet.bending}, ${values.wet.shear}, ${values.wet.modulus}; K3 ${values.duration}; K8 ${values.load_sharing}${values.depth_factor_in_shear ? "; K7 on shear too" : ""}`;
  }
}

export const timberLines = (timber: TimberGiven, format: FormatGiven, units: Units): readonly InputLine[] => [
  ["Timber", `${lengthWords(timber.breadth_mm, units)} along the ply × ${lengthWords(timber.depth_mm, units)} off it`],
  [timberLabel(timber.values.kind), valueWords(timber.values, units)],
  ["Safety format", format.kind === "partial-factor" ? `partial factors, load factor ${significant(format.load_factor)}` : "permissible stress"],
];

/** A figure with its unit, as the project reads it. */
export const told = quantityText;
