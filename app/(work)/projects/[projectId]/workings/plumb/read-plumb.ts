import type { z } from "zod";
import type { plumbInput } from "#lib/contracts/workings/plumb.ts";
import { PLUMB_TOLERANCES } from "#lib/trade/engineering/plumb/plumb-tolerance.ts";
import { choiceOf, numberOf, numberOrNull, textOf, type Entries } from "#app/_ui/form/read-form.ts";
import { readList } from "../_parts/fields/read-parts.ts";

export type PlumbGiven = z.input<typeof plumbInput>;
type Level = PlumbGiven["bottom"];
export const FACES = ["A", "B", "C", "D"] as const;

function diagonalsOf(entries: Entries, name: "bottom" | "top"): Level["diagonals"] {
  const [rising, falling] = [numberOrNull(entries, `${name}.diagonals.cd_to_ab_mm`), numberOrNull(entries, `${name}.diagonals.bc_to_da_mm`)];
  return rising === null && falling === null ? null : { cd_to_ab_mm: rising ?? Number.NaN, bc_to_da_mm: falling ?? Number.NaN };
}

/** Both levels are read at the same places, so face and place are entered once, with the offsets beside each other. */
export function readPlumb(entries: Entries): PlumbGiven {
  const places = readList(entries, "bottom.faces", (at) => ({ face: choiceOf(entries, `${at}.face`, FACES), along_mm: numberOf(entries, `${at}.along_mm`) }), "face");
  const level = (name: "bottom" | "top"): Level => ({
    height_mm: numberOf(entries, `${name}.height_mm`),
    faces: places.map((place, index) => ({ ...place, offset_mm: numberOf(entries, `${name}.faces.${index}.offset_mm`) })),
    diagonals: diagonalsOf(entries, name),
  });
  const rule = PLUMB_TOLERANCES.find((known) => known === textOf(entries, "tolerance.rule"));
  return {
    width_mm: numberOf(entries, "width_mm"), depth_mm: numberOf(entries, "depth_mm"), form_height_mm: numberOf(entries, "form_height_mm"),
    bottom: level("bottom"), top: level("top"),
    tolerance: rule === undefined ? { kind: "own", limit_mm: numberOf(entries, "tolerance.limit_mm") } : { kind: "rule", rule },
  };
}
