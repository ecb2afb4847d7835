import { isDeepStrictEqual } from "node:util";
import { workOutBacking } from "#lib/server/workings/work-out.ts";
import type { BackingTold } from "#lib/contracts/workings/backing.ts";
import { isExample } from "#app/_ui/message/example-notice.tsx";
import { DataTable } from "#app/_ui/page/data-table.tsx";
import { lengthFigure, quantityText, type Units } from "#app/_ui/value/format-quantity.ts";
import { checkValue, percent, significant } from "#app/_ui/value/working-words.ts";
import { drawnHigh } from "../_parts/answer/drawn-high.ts";
import { lengthWords, pressureLines, timberLines, typedWords } from "../_parts/answer/input-words.ts";
import { Verdict } from "../_parts/answer/verdict.tsx";
import type { AnswerContext, Calculator, InputLine } from "../_parts/calculator.ts";
import { BackingFields } from "./backing-fields.tsx";
import { BackingFigure } from "./backing-figure.tsx";
import { readBacking, type BackingGiven } from "./read-backing.ts";

function loadLines(load: BackingGiven["load"], units: Units): readonly InputLine[] {
  if (load.kind === "pressure") return [["Timber carries", lengthWords(load.share_mm, units)], ...pressureLines(load.pressure, units)];
  return load.corners.map(({ at_mm, load_kN_per_m }, index) => [`Load corner ${index + 1}`, `${typedWords(load_kN_per_m, "kN/m", units)} at ${lengthWords(at_mm, units)}`]);
}

const inputLines = (input: BackingGiven, units: Units): readonly InputLine[] => [
  ["Length", lengthWords(input.length_mm, units)],
  ["Clamps", input.supports_mm.map((at) => lengthFigure(at, units)).join(", ")],
  ...timberLines(input.timber, input.format, units),
  ["Bends up to", `span / ${significant(input.deflection_ratio)}`],
  ...loadLines(input.load, units),
];

export const BACKING: Calculator<BackingGiven, BackingTold> = {
  name: "backing",
  of: "backing timber",
  start: ({ values }) => values.backing,
  startNote: () => "Started from the project’s backing timber and pour, over the clamps of one column of its own size.",
  examples: (input, { sources, values }) => (isExample(sources.backing) && isDeepStrictEqual(input.timber.values, values.backing.timber.values) ? ["the backing timber’s stresses"] : []),
  read: readBacking,
  workOut: workOutBacking,
  fields: (given, { units, start }) => <BackingFields given={given} units={units} projectPressure={start.values.pressure} />,
  inputLines,
  answer: (told, input, context) => <Answer told={told} input={input} {...context} />,
  mind: () => [
    "The timber is taken as whole from foot to top and the clamps as unyielding; a joint in the timber needs its own check.",
    "Clamps cannot pull: one that would is shown idle.",
    "Crushing under the clamp’s bar and the clamp itself are not part of this check; the clamp layout checks the clamp.",
  ],
};

function Answer({ told, input, units }: AnswerContext & { readonly told: BackingTold; readonly input: BackingGiven }) {
  const worst = told.uses.reduce((a, b) => (b.utilisation > a.utilisation ? b : a));
  return (
    <>
      <Verdict
        title={told.passes ? `It holds: ${worst.what} works hardest, ${percent(worst.utilisation)}.` : `It does not hold: ${worst.what} is used ${percent(worst.utilisation)}.`}
        passes={told.passes}
        figures={told.uses.map(({ what, utilisation, at_mm, demand, capacity, unit }) => ({
          label: `${what} used`, figure: percent(utilisation),
          note: `${checkValue(demand, unit, units)} of ${checkValue(capacity, unit, units)}, ${lengthFigure(Math.round(at_mm), units)}${units === "us" ? "" : " mm"} up`,
        }))}
      />
      <div style={drawnHigh(98, told.reactions.length)}><BackingFigure told={told} input={input} units={units} /></div>
      <DataTable
        caption="Force on each clamp, without the load factor"
        columns={[
          { key: "at", head: "Height", isRowHead: true, cell: ({ at_mm }: BackingTold["reactions"][number]) => lengthFigure(at_mm, units) },
          { key: "force", head: "Force", isFigure: true, cell: ({ force_kN }) => (force_kN < 1e-6 ? "idle" : quantityText(force_kN, "kN", units, units === "us" ? 0 : 2)) },
        ]}
        rows={told.reactions}
        rowKey={({ at_mm }) => String(at_mm)}
      />
    </>
  );
}
