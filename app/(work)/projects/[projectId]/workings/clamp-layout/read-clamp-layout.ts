import type { z } from "zod";
import type { clampLayoutInput } from "#lib/contracts/workings/clamp-layout.ts";
import { numberOf, numberOrNull, textOf, type Entries } from "#app/_ui/form/read-form.ts";
import { readFormat, readList, readPressure, readTimber } from "../_parts/fields/read-parts.ts";

export type ClampLayoutGiven = z.input<typeof clampLayoutInput>;

const SPACING = ["module_mm", "first_min_mm", "first_max_mm", "top_max_mm", "smallest_gap_mm", "largest_gap_mm"] as const;

function readLayout(entries: Entries): ClampLayoutGiven["layout"] {
  if (textOf(entries, "layout.kind") === "measured") {
    const heights = readList(entries, "layout.heights_mm", (at) => numberOf(entries, at));
    return { kind: "measured", heights_mm: heights.every(Number.isFinite) ? heights.sort((a, b) => a - b) : heights };
  }
  const [module_mm, first_min_mm, first_max_mm, top_max_mm, smallest_gap_mm, largest_gap_mm] = SPACING.map((name) => numberOf(entries, `layout.spacing.${name}`)) as [number, number, number, number, number, number];
  return { kind: "fewest", spacing: { module_mm, first_min_mm, first_max_mm, top_max_mm, smallest_gap_mm, largest_gap_mm } };
}

function readClamp(entries: Entries): ClampLayoutGiven["clamp"] {
  const [modulus, stress] = [numberOrNull(entries, "clamp.arm.section_modulus_cm3"), numberOrNull(entries, "clamp.arm.stress_N_per_mm2")];
  return {
    side_capacity_kN: numberOf(entries, "clamp.side_capacity_kN"),
    capacity_by_span: readList(entries, "clamp.capacity_by_span", (at) => ({ span_mm: numberOf(entries, `${at}.span_mm`), load_kN: numberOf(entries, `${at}.load_kN`) }), "span_mm"),
    arm: modulus === null && stress === null ? null : { section_modulus_cm3: modulus ?? Number.NaN, stress_N_per_mm2: stress ?? Number.NaN },
    wedge_capacity_kN: numberOrNull(entries, "clamp.wedge_capacity_kN"),
  };
}

export const readClampLayout = (entries: Entries): ClampLayoutGiven => ({
  pressure: readPressure(entries, "pressure."),
  format: readFormat(entries),
  timber: readTimber(entries),
  share_mm: numberOf(entries, "share_mm"),
  sides: {
    across: { side_mm: numberOf(entries, "sides.across.side_mm"), wedge_span_mm: numberOf(entries, "sides.across.wedge_span_mm") },
    along: { side_mm: numberOf(entries, "sides.along.side_mm"), wedge_span_mm: numberOf(entries, "sides.along.wedge_span_mm") },
  },
  clamp: readClamp(entries),
  deflection_ratio: numberOf(entries, "deflection_ratio"),
  layout: readLayout(entries),
  rise_rate_temperatures_degC: readList(entries, "rise_rate_temperatures_degC", (at) => numberOf(entries, at)),
});
