import { workOutPressure } from "#lib/server/workings/work-out.ts";
import type { PressureTold } from "#lib/contracts/workings/pressure.ts";
import { PressureEnvelope } from "#app/_ui/drawing/workings/pressure/pressure-envelope.tsx";
import { Figure } from "#app/_ui/page/figure.tsx";
import { lengthFigure, quantityText, type Units } from "#app/_ui/value/format-quantity.ts";
import { pressureLines } from "../_parts/answer/input-words.ts";
import { Verdict } from "../_parts/answer/verdict.tsx";
import type { Calculator } from "../_parts/calculator.ts";
import type { PressureGiven } from "../_parts/fields/pour-fields.tsx";
import { readPressure } from "../_parts/fields/read-parts.ts";
import { PressureFields } from "./pressure-fields.tsx";

export const GOVERNS: Readonly<Record<PressureTold["governs"], string>> = {
  "liquid head": "the liquid head governs",
  "formula": "the method's formula governs",
  "minimum": "the method's least value governs",
};

const NOTES: Readonly<Record<PressureTold["notes"][number], string>> = {
  "characteristic-value": "It is a characteristic value: it goes with partial factors only, never against permissible stresses.",
  "withdrawn-edition": "This edition is withdrawn and kept for comparison only; do not build by it.",
  "uplift-from-batter": "A battered face lifts the form. The uplift is given for one metre of face; hold the form down against all of it, and check what holds it.",
  "seal-and-hold-down": "An upright form lifts too where grout gets under it or a face slopes: seal the foot and hold the form down.",
  "props-not-covered": "Props, bracing, wind and the strength of what the form stands on are not computed here.",
};

export const PRESSURE: Calculator<PressureGiven, PressureTold> = {
  name: "pressure",
  of: "concrete pressure",
  start: ({ values }) => values.pressure,
  startNote: () => "Started from the project’s pour conditions and one column of its own size. Change any entry and work it out again.",
  examples: () => [],
  read: (entries) => readPressure(entries),
  workOut: workOutPressure,
  fields: (given, { units }) => <PressureFields given={given} units={units} />,
  inputLines: pressureLines,
  answer: (told, input, { units }) => <Answer told={told} input={input} units={units} />,
  mind: (told) => (told === null ? [] : told.notes.map((note) => NOTES[note])),
};

function Answer({ told, input, units }: { readonly told: PressureTold; readonly input: PressureGiven; readonly units: Units }) {
  const kPa = (value: number) => quantityText(value, "kPa", units);
  const perMetre = (value: number) => quantityText(value, "kN/m", units, units === "us" ? 0 : 1);
  const height = (metres: number) => lengthFigure(Math.round(metres * 1000), units);
  return (
    <>
      <Verdict
        title={`${kPa(told.limit_kPa)} at the foot, by ${told.edition}`}
        passes={told.withdrawn_edition ? false : null}
        figures={[
          { label: "Largest pressure", figure: kPa(told.limit_kPa), note: `${told.edition}: ${GOVERNS[told.governs]}${told.value_kind === "characteristic" ? "; characteristic value" : ""}` },
          { label: units === "us" ? "On one foot of face" : "On one metre of face", figure: perMetre(told.resultant_kN_per_m), note: `${height(told.resultant_height_m)}${units === "us" ? "" : " mm"} above the foot; on average ${kPa(told.average_kPa)}` },
          ...(told.uplift_kN_per_m > 0 ? [{ label: "Uplift", figure: perMetre(told.uplift_kN_per_m), note: `per ${units === "us" ? "foot" : "metre"} of battered face` }] : []),
        ]}
      />
      <Figure caption={`Pressure over the height of the form; heights above the foot${units === "us" ? "" : " in mm"}; ${told.edition}`}>
        <PressureEnvelope
          points={told.points} pourHeightMm={told.pour_height_m * 1000} formHeightMm={input.form.height_mm} density={input.pour.concrete_density_kN_per_m3}
          units={units} edition={told.edition} resultant={{ heightMm: told.resultant_height_m * 1000, text: perMetre(told.resultant_kN_per_m) }}
        />
      </Figure>
    </>
  );
}
