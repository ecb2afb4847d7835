import { currentCaller } from "#lib/server/gate/session.ts";
import { workOutPressure } from "#lib/server/workings/work-out.ts";
import type { BackingTold } from "#lib/contracts/workings/backing.ts";
import { BackingLines } from "#app/_ui/drawing/workings/timber/backing-lines.tsx";
import { Figure } from "#app/_ui/page/figure.tsx";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import type { BackingGiven } from "./read-backing.ts";

type Load = readonly { readonly at_mm: number; readonly load_kN_per_m: number }[];

/** The corners of the load from the foot up; those of a pressure are asked for, never worked out here. */
async function loadOf(load: BackingGiven["load"]): Promise<Load> {
  if (load.kind === "corners") return load.corners;
  const pressure = await workOutPressure(await currentCaller(), load.pressure);
  if (!pressure.ok) return [];
  const { points, pour_height_m } = pressure.value;
  return points.map(({ depth_m, pressure_kPa }) => ({ at_mm: (pour_height_m - depth_m) * 1000, load_kN_per_m: (pressure_kPa * load.share_mm) / 1000 })).reverse();
}

export async function BackingFigure({ told, input, units }: { readonly told: BackingTold; readonly input: BackingGiven; readonly units: Units }) {
  return (
    <Figure caption={`The timber as it stands; heights above the foot${units === "us" ? "" : " in mm"}; under the load as it is, without the load factor`}>
      <BackingLines lengthMm={input.length_mm} load={await loadOf(input.load)} reactions={told.reactions} samples={told.samples} units={units} />
    </Figure>
  );
}
