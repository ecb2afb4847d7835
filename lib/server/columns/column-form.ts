import "server-only";
import { asClampKind, asPourConditions, asShutterRule } from "#lib/contracts/shutter.ts";
import { mm } from "#lib/kernel/units.ts";
import { fail, type Result } from "#lib/kernel/result.ts";
import type { Refusal } from "#lib/trade/engineering/working.ts";
import { designShutter } from "#lib/trade/shutter/design-shutter.ts";
import { depthOver, formHeight, type FormHeight } from "#lib/trade/shutter/form-height.ts";
import type { ColumnSection, FormSet, ShutterRefusal } from "#lib/trade/shutter/form-set.ts";
import type { readRules } from "../projects/project-head.ts";
import { toClampKind, type ClampKindRow } from "../projects/clamp-store.ts";

type Level = { elevationMm: number; slabDepthMm: number; beamDepthMm: number };
export type Lift = {
  shape: string; widthMm: number; depthMm: number; formHeightMm: number | null; headedBy: string; fromLevel: Level; toLevel: Level;
};
export type ColumnForm = {
  readonly height: Result<FormHeight, Refusal>;
  readonly formSet: Result<FormSet, ShutterRefusal | Refusal>;
};

export const sectionOf = (lift: Pick<Lift, "shape" | "widthMm" | "depthMm">): ColumnSection =>
  lift.shape === "circle"
    ? { shape: "round", diameter: mm(lift.widthMm) }
    : { shape: "rectangular", width: mm(lift.widthMm), depth: mm(lift.depthMm) };

/** The form height and the form set of one lift, from the project's rules as they stand. */
export function columnForm(lift: Lift, rules: ReturnType<typeof readRules>, clampKinds: readonly ClampKindRow[]): ColumnForm {
  const rule = asShutterRule(rules.shutterRule);
  const height = formHeight({
    storeyHeight: mm(lift.toLevel.elevationMm - lift.fromLevel.elevationMm),
    depthOver: depthOver(lift.headedBy === "beam" ? "beam" : "slab", { slab: mm(lift.toLevel.slabDepthMm), beam: mm(lift.toLevel.beamDepthMm) }),
    kickerHeight: rule.kickerHeight,
    override: lift.formHeightMm === null ? null : mm(lift.formHeightMm),
  });
  if (!height.ok) return { height, formSet: fail(height.failure) };
  const formSet = designShutter({
    section: sectionOf(lift), formHeight: height.value.height, rule, pour: asPourConditions(rules.pourConditions),
    clampKinds: clampKinds.map((row) => asClampKind(toClampKind(row))),
  });
  return { height, formSet };
}
