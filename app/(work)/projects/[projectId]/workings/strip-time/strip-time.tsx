import { workOutStripTime } from "#lib/server/workings/work-out.ts";
import type { StripTimeTold } from "#lib/contracts/workings/strip-time.ts";
import { StripCurve } from "#app/_ui/drawing/workings/time/strip-curve.tsx";
import { Figure } from "#app/_ui/page/figure.tsx";
import { quantityText, type Units } from "#app/_ui/value/format-quantity.ts";
import { quantityEdge } from "#app/_ui/value/quantity-edge.ts";
import { Verdict } from "../_parts/answer/verdict.tsx";
import type { AnswerContext, Calculator, InputLine } from "../_parts/calculator.ts";
import { hourlyText } from "./hourly-text.ts";
import { readStripTime, type StripTimeGiven } from "./read-strip-time.ts";
import { StripTimeFields } from "./strip-time-fields.tsx";
import { CAUTIONS, gatheredEdge, ruleLines, RULES } from "./strip-time-words.ts";

function inputLines(input: StripTimeGiven, units: Units): readonly InputLine[] {
  const edge = quantityEdge("degC", units);
  const record = hourlyText(input.hourly_degC.map((temperature) => (temperature === null ? null : edge.toTyped(temperature))), 1).replaceAll("\n", " ");
  return [...ruleLines(input.rule, units), ["Measured in the", input.measured], [`Each hour’s mean, ${edge.unit}`, record]];
}

export const STRIP_TIME: Calculator<StripTimeGiven, StripTimeTold> = {
  name: "strip-time",
  of: "strip time",
  start: ({ values }) => values.stripTime,
  startNote: () => "The hours are those of the project’s set-up. The temperatures are invented: paste the record of your own gauge.",
  examples: () => [],
  read: readStripTime,
  workOut: workOutStripTime,
  fields: (given, { units }) => <StripTimeFields given={given} units={units} />,
  inputLines,
  answer: (told, input, context) => <Answer told={told} input={input} {...context} />,
  mind: (told) => (told === null ? [CAUTIONS["engineer-releases"]] : told.cautions.map((caution) => CAUTIONS[caution])),
};

function Answer({ told, input, units }: AnswerContext & { readonly told: StripTimeTold; readonly input: StripTimeGiven }) {
  const edge = gatheredEdge(told.unit, units);
  const earliest = quantityText(told.earliest_h, "h", units);
  const rule = RULES.find(({ value }) => value === input.rule.kind)?.label ?? input.rule.kind;
  return (
    <>
      <Verdict
        title={`Not before ${earliest} after the end of the pour, and then only once it is released.`}
        passes={null}
        figures={[
          { label: "Earliest, after the pour", figure: earliest, note: `${rule}: ${told.working[0]?.source ?? ""}` },
          { label: "Asked for", figure: edge.text(told.required), note: `depends on ${told.depends_on.join("; ")}` },
        ]}
      />
      <Figure caption="What has been gathered since the pour, the moment it is enough, and the record it comes from">
        <StripCurve
          hourly={input.hourly_degC} progress={told.progress} required={told.required} earliestHours={told.earliest_h} units={units} requiredText={edge.text(told.required)}
          toShown={edge.toShown} fromShown={edge.fromShown} unitText={edge.unit} measured={input.measured}
        />
      </Figure>
    </>
  );
}
