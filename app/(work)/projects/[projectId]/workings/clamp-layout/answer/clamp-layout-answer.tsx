import type { CSSProperties } from "react";
import type { ClampLayoutTold } from "#lib/contracts/workings/clamp-layout.ts";
import { Figure } from "#app/_ui/page/figure.tsx";
import { quantityText } from "#app/_ui/value/format-quantity.ts";
import { percent } from "#app/_ui/value/working-words.ts";
import { LEFT_OUT, type AnswerContext } from "../../_parts/calculator.ts";
import { Verdict, type BigFigure } from "../../_parts/answer/verdict.tsx";
import type { ClampLayoutGiven } from "../read-clamp-layout.ts";
import { CheckRows } from "./check-rows.tsx";
import { ClampRows } from "./clamp-rows.tsx";
import { checkName, ELEMENTS, worstOf } from "./clamp-layout-words.ts";
import { LayoutDrawing } from "./layout-drawing.tsx";
import { RiseRates } from "./rise-rates.tsx";
import { WithoutOne } from "./without-one.tsx";

export type ClampLayoutAnswerProps = AnswerContext & { readonly told: ClampLayoutTold; readonly input: ClampLayoutGiven };

export function ClampLayoutAnswer({ told, input, units, query }: ClampLayoutAnswerProps) {
  const { limit_kPa, edition } = told.pressure;
  const asked = query.get(LEFT_OUT);
  const without = asked === null ? undefined : told.heights_mm[Number(asked)];
  return (
    <>
      <Verdict title={titleOf(told)} passes={told.passes} figures={figuresOf(told, `${quantityText(limit_kPa, "kPa", units)} at the foot by ${edition}`)} />
      <div className="grid grid-cols-1 items-start gap-5 print:grid-cols-[minmax(0,1fr)_auto] print:gap-2">
        <div className="min-w-0" style={besideRows(told)}>
          <Figure caption={`Clamps shaded by their use, the hardest-worked check of each; pressure by ${edition}`}><LayoutDrawing told={told} input={input} units={units} /></Figure>
        </div>
        {without === undefined ? null : <div className="min-w-0 print:order-last print:col-span-2"><WithoutOne input={input} heights={told.heights_mm} withoutMm={without} units={units} query={query} /></div>}
        <div className="flex min-w-0 flex-col gap-5 print:gap-2">
          <ClampRows told={told} units={units} query={query} />
          <CheckRows checks={told.checks} units={units} />
          <RiseRates rates={told.rise_rates} units={units} />
        </div>
      </div>
    </>
  );
}

/** On paper the drawing stands beside the tables and is as high as they are. */
const besideRows = ({ forces, checks, rise_rates }: ClampLayoutTold): CSSProperties & Record<"--drawing", string> =>
  ({ "--drawing": `${Math.min(150, 22 + 3.5 * (forces.length + checks.length + rise_rates.length))}mm` });

function titleOf({ passes, fewest, heights_mm, checks }: ClampLayoutTold): string {
  const worst = worstOf(checks);
  const count = `${heights_mm.length} clamps`;
  if (!passes) return `It does not hold: ${checkName(worst)} is used ${percent(worst.utilisation)}.`;
  if (fewest === null) return `These ${count} hold; the hardest worked is ${checkName(worst)}, ${percent(worst.utilisation)}.`;
  return fewest.proven ? `${count} hold, and no layout within the rule has fewer.` : `${count} hold; fewer than ${fewest.lower_bound} is impossible, between the two is not ruled out.`;
}

function figuresOf({ heights_mm, checks }: ClampLayoutTold, pressure: string): readonly BigFigure[] {
  const worst = (element: keyof typeof ELEMENTS): readonly BigFigure[] => {
    const own = checks.filter((check) => check.element === element);
    if (own.length === 0) return [];
    const { what, side, utilisation } = worstOf(own);
    return [{ label: `${ELEMENTS[element]} used`, figure: percent(utilisation), note: [what, side === null ? "" : side === "across" ? "faces A, C" : "faces B, D"].filter((word) => word !== "").join(", ") }];
  };
  return [{ label: "Clamps", figure: heights_mm.length, note: pressure }, ...worst("backing"), ...worst("clamp"), ...worst("arm"), ...worst("wedge")];
}
