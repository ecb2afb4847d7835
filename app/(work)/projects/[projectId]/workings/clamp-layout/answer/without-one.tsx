import { currentCaller } from "#lib/server/gate/session.ts";
import { workOutClampLayout } from "#lib/server/workings/work-out.ts";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { Figure } from "#app/_ui/page/figure.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { lengthFigure, type Units } from "#app/_ui/value/format-quantity.ts";
import { percent } from "#app/_ui/value/working-words.ts";
import { NoAnswer } from "../../_parts/answer/no-answer.tsx";
import { LEFT_OUT } from "../../_parts/calculator.ts";
import type { ClampLayoutGiven } from "../read-clamp-layout.ts";
import { checkName } from "./clamp-layout-words.ts";
import { CheckRows } from "./check-rows.tsx";
import { LayoutDrawing } from "./layout-drawing.tsx";

export type WithoutOneProps = {
  readonly input: ClampLayoutGiven;
  readonly heights: readonly number[];
  readonly withoutMm: number;
  readonly units: Units;
  readonly query: URLSearchParams;
};

/** The same form without one of its clamps, worked out anew: what breaks, and where. */
export async function WithoutOne({ input, heights, withoutMm, units, query }: WithoutOneProps) {
  const rest: ClampLayoutGiven = { ...input, layout: { kind: "measured", heights_mm: heights.filter((height) => height !== withoutMm) }, rise_rate_temperatures_degC: [] };
  const answer = await workOutClampLayout(await currentCaller(), rest);
  const back = new URLSearchParams(query);
  back.delete(LEFT_OUT);
  const broken = answer.ok ? answer.value.checks.filter(({ utilisation }) => utilisation > 1) : [];
  return (
    <div id={LEFT_OUT} className="scroll-mt-4">
      <Section title={`Without the clamp at ${lengthFigure(withoutMm, units)}`} actions={<ButtonLink href={`?${back.toString()}`}>With every clamp</ButtonLink>}>
        {answer.ok ? (
          <div className="flex flex-col gap-4">
            <p className={`border-l-8 px-3 py-1 font-semibold ${broken.length > 0 ? "border-flag bg-flag-wash" : "border-accent bg-accent-wash"}`}>
              {broken.length > 0 ? `It does not hold: ${broken.map((check) => `${checkName(check)} ${percent(check.utilisation)}`).join(", ")}.` : "It still holds by this check. Do not leave a clamp out that the form was designed with."}
            </p>
            <Figure caption="The layout with that clamp left out"><LayoutDrawing told={answer.value} input={rest} units={units} withoutMm={withoutMm} /></Figure>
            <CheckRows checks={answer.value.checks} units={units} />
          </div>
        ) : <NoAnswer failure={answer.failure} units={units} />}
      </Section>
    </div>
  );
}
