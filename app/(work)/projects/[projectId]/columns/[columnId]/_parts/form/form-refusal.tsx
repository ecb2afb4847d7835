import { quantities, type Quantities, type ShutterRefusal } from "#lib/trade/shutter/form-set.ts";
import type { Refusal } from "#lib/trade/engineering/working.ts";
import { mm } from "#lib/kernel/units.ts";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import { RefusalRows } from "#app/_ui/message/refusal-rows.tsx";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { remedyOf } from "#app/_ui/value/refusal-words.ts";
import { paths } from "#app/paths.ts";
import type { ColumnPage } from "../column-page.ts";
import { FormFigures } from "./form-figures.tsx";
import { REFUSAL_TITLES, refusalKind } from "./words/refusal-words.ts";

export type FormRefusalProps = { readonly page: Pick<ColumnPage, "project" | "column" | "form">; readonly refusal: ShutterRefusal | Refusal; readonly canSetUp: boolean };

/** Why there is no form set: the limit, what was given, what would be allowed, and what to do. Never a number instead. */
export function FormRefusal({ page, refusal, canSetUp }: FormRefusalProps) {
  const { project } = page;
  const kind = refusalKind(refusal);
  const amounts = amountsOf(page, refusal);
  return (
    <div className="flex flex-col gap-4">
      <Notice kind="problem" title={REFUSAL_TITLES[kind]}>
        <p>{remedyOf(refusal)}</p>
        <RefusalRows refusal={refusal} units={project.units} />
        {canSetUp ? <div className="no-print mt-3 flex flex-wrap gap-3">{wayOut(kind, project.id, project.units)}</div> : null}
      </Notice>
      {amounts ? <FormFigures quantities={amounts} units={project.units} /> : null}
    </div>
  );
}

function amountsOf({ column, form }: FormRefusalProps["page"], refusal: ShutterRefusal | Refusal): Quantities | null {
  if ("kind" in refusal) return refusal.quantities;
  if (!form.height.ok) return null;
  const section = column.shape === "circle"
    ? { shape: "round" as const, diameter: mm(column.widthMm) }
    : { shape: "rectangular" as const, width: mm(column.widthMm), depth: mm(column.depthMm) };
  return quantities(section, form.height.value.height);
}

function wayOut(kind: ReturnType<typeof refusalKind>, projectId: string, units: Units) {
  const part = (name: "pour" | "shutter" | "levels", label: string) => <ButtonLink key={name} href={paths.setUpPart(projectId, name)}>{label}</ButtonLink>;
  const clamps = <ButtonLink key="clamps" href={paths.clamps(units)}>Clamp kinds</ButtonLink>;
  switch (kind) {
    case "round-section":
      return null;
    case "form-height":
      return part("levels", "Levels");
    case "invalid-input":
      return part("shutter", "Shutter");
    case "pressure-limit":
      return part("pour", "Pour and pressure");
    case "ply-span":
      return [part("pour", "Pour and pressure"), part("shutter", "Shutter")];
    case "no-clamp-fits":
      return [clamps, part("shutter", "Shutter")];
    case "no-clamp-layout":
      return [part("pour", "Pour and pressure"), part("shutter", "Shutter"), clamps];
    default:
      return kind satisfies never;
  }
}
