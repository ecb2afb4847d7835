import "server-only";
import { columnInput } from "#lib/contracts/columns.ts";
import { notFound, ok } from "#lib/kernel/result.ts";
import { foldColumn } from "#lib/trade/progress/column-state.ts";
import { next } from "#lib/trade/progress/next.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { listClampKindRows } from "../projects/clamp-store.ts";
import { projectHead, readRules } from "../projects/project-head.ts";
import { readProject } from "../projects/store.ts";
import { listQueriedEntries } from "../progress/queried-entries.ts";
import { toProgressRule } from "../progress/rule.ts";
import { listEventsWithNames } from "../progress/store.ts";
import { columnForm } from "./column-form.ts";
import { findColumn, listChangesOf, listStack, type ColumnRow } from "./store.ts";

const level = ({ id, name, elevationMm, slabDepthMm, beamDepthMm }: ColumnRow["toLevel"]) => ({ id, name, elevationMm, slabDepthMm, beamDepthMm });

const columnFacts = (row: ColumnRow) => ({
  id: row.id, gridRef: row.gridRef, mark: { id: row.mark.id, name: row.mark.name }, version: row.version,
  shape: row.shape === "circle" ? ("circle" as const) : ("rectangle" as const), widthMm: row.widthMm, depthMm: row.depthMm,
  fromLevel: level(row.fromLevel), toLevel: level(row.toLevel), headedBy: row.headedBy === "beam" ? ("beam" as const) : ("slab" as const),
  formHeightMm: row.formHeightMm, concrete: row.concrete, mainBars: row.mainBars, remarks: row.remarks,
});

/** Everything the page of one column shows: what it is, its form set with the working, and what happened to it. */
export const getColumn = projectUseCase("columns.getColumn", "progress.read", columnInput, async (scope, { columnId }) => {
  const row = await findColumn(scope, columnId);
  if (!row) return notFound("column");
  const projectRow = await readProject(scope);
  const project = projectHead(projectRow);
  const rules = readRules(projectRow);
  const clampKinds = await listClampKindRows(scope);
  const events = await listEventsWithNames(scope, columnId);
  const rule = toProgressRule(rules.progressRule, project);
  const state = foldColumn(events.map(({ event }) => event), rule);
  const changes = await listChangesOf(scope, columnId);
  return ok({
    project,
    column: columnFacts(row),
    stack: (await listStack(scope, row.gridRef)).map(({ fromLevel, ...lift }) => ({ ...lift, fromLevel: fromLevel.name })),
    form: columnForm(row, rules, clampKinds),
    state,
    next: next(state, rule, scope.now),
    progressRule: rule,
    queried: (await listQueriedEntries(scope, [{ id: columnId, state }], rule)).get(columnId) ?? [],
    events: events.map(({ event, byName }) => ({ ...event, byName })),
    changes: changes.map((change) => ({ seq: Number(change.seq), at: change.at.toISOString(), by: change.person.name, detail: change.detail })),
    readAt: scope.now,
  });
});
export type ColumnPage = Extract<Awaited<ReturnType<typeof getColumn>>, { ok: true }>["value"];
