import type { ClampLayoutTold } from "#lib/contracts/workings/clamp-layout.ts";
import { ClampElevation } from "#app/_ui/drawing/workings/pressure/clamp-elevation.tsx";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import type { ClampLayoutGiven } from "../read-clamp-layout.ts";

export type LayoutDrawingProps = { readonly told: ClampLayoutTold; readonly input: ClampLayoutGiven; readonly units: Units; readonly withoutMm?: number };

/** Face A of the form with the clamps of an answer. */
export function LayoutDrawing({ told, input, units, withoutMm }: LayoutDrawingProps) {
  const backing = told.checks.filter(({ element }) => element === "backing");
  const { side_mm, wedge_span_mm } = input.sides.across;
  return (
    <ClampElevation
      formHeightMm={input.pressure.form.height_mm} sideMm={side_mm} wedgeSpanMm={wedge_span_mm} clamps={told.forces}
      points={told.pressure.points} pourHeightMm={told.pressure.pour_height_m * 1000} backing={backing} units={units}
      {...(withoutMm === undefined ? {} : { withoutMm })}
    />
  );
}
