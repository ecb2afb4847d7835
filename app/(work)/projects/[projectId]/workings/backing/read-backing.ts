import type { z } from "zod";
import type { backingInput } from "#lib/contracts/workings/backing.ts";
import { numberOf, textOf, type Entries } from "#app/_ui/form/read-form.ts";
import { readFormat, readList, readPressure, readTimber } from "../_parts/fields/read-parts.ts";

export type BackingGiven = z.input<typeof backingInput>;

const readLoad = (entries: Entries): BackingGiven["load"] =>
  textOf(entries, "load.kind") === "corners"
    ? { kind: "corners", corners: readList(entries, "load.corners", (at) => ({ at_mm: numberOf(entries, `${at}.at_mm`), load_kN_per_m: numberOf(entries, `${at}.load_kN_per_m`) }), "at_mm") }
    : { kind: "pressure", pressure: readPressure(entries, "load.pressure."), share_mm: numberOf(entries, "load.share_mm") };

export function readBacking(entries: Entries): BackingGiven {
  const supports = readList(entries, "supports_mm", (at) => numberOf(entries, at));
  return {
    timber: readTimber(entries), format: readFormat(entries), load: readLoad(entries), length_mm: numberOf(entries, "length_mm"),
    supports_mm: supports.every(Number.isFinite) ? supports.sort((a, b) => a - b) : supports,
    deflection_ratio: numberOf(entries, "deflection_ratio"),
  };
}
