import "server-only";
import { startWorkingsInput } from "#lib/contracts/projects.ts";
import { notFound, ok } from "#lib/kernel/result.ts";
import { columnForm } from "../columns/column-form.ts";
import { findColumn, type ColumnRow } from "../columns/store.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { listClampKindRows, toClampKind, type ClampKindRow } from "../projects/clamp-store.ts";
import { projectHead, readRules } from "../projects/project-head.ts";
import { listLevels, listMarks, readProject } from "../projects/store.ts";
import { sampleColumn, type OwnSize, type Rules } from "./sample-column.ts";
import { startValues } from "./start-values.ts";

/** Null where the column cannot be boxed by timber panels, or has no form height yet. */
function ownSize(row: ColumnRow, rules: Rules, kinds: readonly ClampKindRow[]): OwnSize | null {
  const { height } = columnForm(row, rules, kinds);
  return row.shape === "circle" || !height.ok ? null : { widthMm: row.widthMm, depthMm: row.depthMm, heightMm: height.value.height };
}

/** What the calculators start from in this project; also for one that has no column yet. */
export const startWorkings = projectUseCase("workings.startWorkings", "workings.use", startWorkingsInput, async (scope, { columnId }) => {
  const row = await readProject(scope);
  const { id, name, units } = projectHead(row);
  const rules = readRules(row);
  const kinds = await listClampKindRows(scope);
  const asked = columnId === undefined ? null : await findColumn(scope, columnId);
  if (columnId !== undefined && asked === null) return notFound("column");
  const own = asked === null ? null : ownSize(asked, rules, kinds);
  const column = sampleColumn(rules, { levels: await listLevels(scope), marks: await listMarks(scope), isUs: units === "us" }, kinds.map(toClampKind), own);
  const { ply, backing } = rules.shutterRule;
  return ok({
    project: { id, name, units },
    column: asked === null || own === null ? null : { id: asked.id, name: `${asked.gridRef}, ${asked.fromLevel.name}`, heights: column.heights },
    values: startValues(rules, column, units === "us"),
    sources: { ply: ply.source, backing: backing.source, clamp: column.clamp?.source ?? null, clampName: column.clamp?.name ?? null },
  });
});
