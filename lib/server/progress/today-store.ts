import "server-only";
import { z } from "zod";
import { foldColumn, type ColumnState } from "#lib/trade/progress/column-state.ts";
import type { ProgressRule } from "#lib/trade/progress/progress-rule.ts";
import { ALL_DONE } from "#lib/trade/progress/stages.ts";
import type { ProjectScope } from "../gate/scope.ts";

export type OpenColumn = {
  id: string; gridRef: string; mark: string; levelId: string; level: string; shape: string; widthMm: number; depthMm: number;
  done: number; flagged: boolean; state: ColumnState;
};

/** Only that it is a fold at all: the shape is this product's own, and a test rebuilds every one from its events. */
const keptState = z.looseObject({ done: z.number(), reached: z.looseObject({}), exceptions: z.array(z.looseObject({})) });

/** Columns begun, flagged, on the given level, or with something the owner has not seen; lowest level first. */
export async function listOpenColumns(scope: ProjectScope, levelId: string | null, rule: ProgressRule, most: number): Promise<OpenColumn[]> {
  const rows = await scope.tx.$queryRaw<(Omit<OpenColumn, "state"> & { state: unknown })[]>`
    select c.id::text, c.grid_ref "gridRef", m.name mark, l.id::text "levelId", l.name level, c.shape, c.width_mm "widthMm",
           c.depth_mm "depthMm", c.done, c.flagged, c.state
    from column_lift c
    join level l on l.company_id = c.company_id and l.project_id = c.project_id and l.id = c.from_level_id
    join column_mark m on m.company_id = c.company_id and m.project_id = c.project_id and m.id = c.mark_id
    where c.company_id = ${scope.companyId}::uuid and c.project_id = ${scope.projectId}::uuid and c.removed_at is null
      and (c.done between 1 and ${ALL_DONE - 1} or c.flagged or (c.done = 0 and c.from_level_id = ${levelId}::uuid)
           or (c.state ->> 'asksForReading')::boolean
           or c.state @? '$.exceptions[*] ? (@.acknowledged == false)')
    order by c.flagged desc, l.elevation_mm, c.grid_ref limit ${most}::int`;
  const untouched = foldColumn([], rule);
  return rows.map((row) => ({ ...row, state: row.state === null ? untouched : (keptState.parse(row.state) as unknown as ColumnState) }));
}

/** The lowest level that still has columns nobody has begun. */
export async function findLevelToBegin(scope: ProjectScope): Promise<string | null> {
  const rows = await scope.tx.$queryRaw<{ id: string }[]>`
    select l.id::text from column_lift c
    join level l on l.company_id = c.company_id and l.project_id = c.project_id and l.id = c.from_level_id
    where c.company_id = ${scope.companyId}::uuid and c.project_id = ${scope.projectId}::uuid and c.removed_at is null and c.done = 0
    group by l.id, l.elevation_mm order by l.elevation_mm limit 1`;
  return rows[0]?.id ?? null;
}
