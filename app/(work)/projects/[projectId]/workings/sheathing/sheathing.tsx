import { isDeepStrictEqual } from "node:util";
import { workOutSheathing } from "#lib/server/workings/work-out.ts";
import type { SheathingTold } from "#lib/contracts/workings/sheathing.ts";
import { SheathingStrip } from "#app/_ui/drawing/workings/timber/sheathing-strip.tsx";
import { isExample } from "#app/_ui/message/example-notice.tsx";
import { Figure } from "#app/_ui/page/figure.tsx";
import { quantityText, type Units } from "#app/_ui/value/format-quantity.ts";
import { percent, significant } from "#app/_ui/value/working-words.ts";
import { lengthWords, typedWords } from "../_parts/answer/input-words.ts";
import { Verdict } from "../_parts/answer/verdict.tsx";
import type { AnswerContext, Calculator, InputLine } from "../_parts/calculator.ts";
import { readSheathing, type SheathingGiven } from "./read-sheathing.ts";
import { SheathingFields } from "./sheathing-fields.tsx";
import { GRADES, GRAINS } from "./sheathing-words.ts";

function boardWords(board: SheathingGiven["board"], units: Units): string {
  if (board.kind === "apa") return `US form plywood ${board.thickness} in., ${GRADES.find(({ value }) => value === board.grade)?.label ?? ""}, face grain ${GRAINS[board.grain]}, ${board.reused ? "used again and again" : "used once"}`;
  return `EI ${typedWords(board.bending_stiffness_kN_m2_per_m, "kN.m2/m", units)}, M ${typedWords(board.moment_capacity_kN_m_per_m, "kN.m/m", units)}, V ${typedWords(board.shear_capacity_kN_per_m, "kN/m", units)}`;
}

const inputLines = (input: SheathingGiven, units: Units): readonly InputLine[] => [
  ["Pressure", typedWords(input.pressure_kPa, "kPa", units)],
  ["Centres of timbers", lengthWords(input.centres_mm, units)],
  ["Timber width", lengthWords(input.support_width_mm, units)],
  ["Overhang", lengthWords(input.overhang_mm ?? 0, units)],
  ["Spans", input.spans === 3 ? "3 or more" : String(input.spans)],
  ["Bends up to", `span / ${significant(input.deflection_ratio)}`],
  ["Board", boardWords(input.board, units)],
];

export const SHEATHING: Calculator<SheathingGiven, SheathingTold> = {
  name: "sheathing",
  of: "sheathing",
  start: ({ values }) => values.sheathing,
  startNote: () => "Started from the project’s ply and the panel of one column of its own size, under the pressure at its foot.",
  examples: (input, { sources, values }) => (isExample(sources.ply) && isDeepStrictEqual(input.board, values.sheathing.board) ? ["the ply’s values"] : []),
  read: readSheathing,
  workOut: workOutSheathing,
  fields: (given, { units }) => <SheathingFields given={given} units={units} />,
  inputLines,
  answer: (told, input, context) => <Answer told={told} input={input} {...context} />,
  mind: () => [
    "Ply is checked with permissible values as entered, every factor in, for the direction in which it spans; do not mix in limit-state values.",
    "Wet ply is weaker and softer: take the supplier’s values for wet use.",
  ],
};

function Answer({ told, input, units }: AnswerContext & { readonly told: SheathingTold; readonly input: SheathingGiven }) {
  const kPa = (value: number) => quantityText(value, "kPa", units);
  return (
    <>
      <Verdict
        title={told.passes ? `It holds: the board carries up to ${kPa(told.allowed_pressure_kPa)}.` : `It does not hold: the board carries up to ${kPa(told.allowed_pressure_kPa)}, ${told.governs} first.`}
        passes={told.passes}
        figures={[
          { label: "Carries up to", figure: kPa(told.allowed_pressure_kPa), note: `${told.governs} governs; ${told.working[0]?.source ?? ""}` },
          ...told.uses.map(({ what, utilisation, allowed_pressure_kPa }) => ({ label: `${what} used`, figure: percent(utilisation), note: `its limit is reached at ${kPa(allowed_pressure_kPa)}` })),
        ]}
      />
      <Figure caption="The strip over its spans, and how far each limit is used">
        <SheathingStrip spans={input.spans} centresMm={input.centres_mm} supportWidthMm={input.support_width_mm} overhangMm={input.overhang_mm ?? 0} pressure={input.pressure_kPa} uses={told.uses} units={units} />
      </Figure>
    </>
  );
}
