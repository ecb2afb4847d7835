import type { z } from "zod";
import type { sheathingInput } from "#lib/contracts/workings/sheathing.ts";
import { FACE_GRAINS, PLY_GRADES, PLY_THICKNESSES } from "#lib/trade/engineering/sheathing/apa-sections.ts";
import { choiceOf, isTicked, numberOf, textOf, type Entries } from "#app/_ui/form/read-form.ts";

export type SheathingGiven = z.input<typeof sheathingInput>;

const readBoard = (entries: Entries): SheathingGiven["board"] =>
  textOf(entries, "board.kind") === "apa"
    ? {
        kind: "apa", thickness: choiceOf(entries, "board.thickness", PLY_THICKNESSES), grade: choiceOf(entries, "board.grade", PLY_GRADES),
        grain: choiceOf(entries, "board.grain", FACE_GRAINS), reused: isTicked(entries, "board.reused"),
      }
    : {
        kind: "own", bending_stiffness_kN_m2_per_m: numberOf(entries, "board.bending_stiffness_kN_m2_per_m"),
        moment_capacity_kN_m_per_m: numberOf(entries, "board.moment_capacity_kN_m_per_m"), shear_capacity_kN_per_m: numberOf(entries, "board.shear_capacity_kN_per_m"),
      };

export const readSheathing = (entries: Entries): SheathingGiven => ({
  board: readBoard(entries),
  pressure_kPa: numberOf(entries, "pressure_kPa"),
  centres_mm: numberOf(entries, "centres_mm"),
  spans: Number(choiceOf(entries, "spans", ["3", "2", "1"])) as 1 | 2 | 3,
  support_width_mm: numberOf(entries, "support_width_mm"),
  overhang_mm: numberOf(entries, "overhang_mm"),
  deflection_ratio: numberOf(entries, "deflection_ratio"),
});
