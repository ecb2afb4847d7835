import "server-only";
import { Prisma } from "#prisma/generated/client.ts";
import type { ProjectScope } from "../gate/scope.ts";
import { sha256 } from "../platform/secrets.ts";

/** The same for the same rows in the same order. */
export const listStamp = (rows: readonly object[]): string => sha256(JSON.stringify(rows)).slice(0, 24);

type ListShape = { readonly table: string; readonly columns: Readonly<Record<string, string>>; readonly passing: string };

/** Columns by database name and type; `passing` sets what must be unique to a value no list can hold. */
const LISTS = {
  level: {
    table: "level",
    columns: { name: "text", elevation_mm: "int", slab_depth_mm: "int", beam_depth_mm: "int" },
    passing: `name = E'\\x01' || id::text, elevation_mm = -1000000 - passing.number::int`,
  },
  gridLine: {
    table: "grid_line",
    columns: { axis: "text", name: "text", offset_mm: "int" },
    passing: `name = E'\\x01' || id::text`,
  },
  mark: {
    table: "column_mark",
    columns: { name: "text", shape: "text", width_mm: "float8", depth_mm: "float8" },
    passing: `name = E'\\x01' || id::text`,
  },
} as const satisfies Record<string, ListShape>;

export type ListRow = { readonly id: string; readonly isNew: boolean } & Readonly<Record<string, string | number | boolean>>;

/**
 * Brings one of the project's lists to what is wanted. Rows left out are deleted (the database refuses one still in
 * use); the kept ones pass through values of their own, so that two rows may swap names or heights in one save.
 */
export async function replaceList(scope: ProjectScope, list: keyof typeof LISTS, rows: readonly ListRow[]): Promise<void> {
  const shape: ListShape = LISTS[list];
  const table = Prisma.raw(shape.table);
  const names = Object.keys(shape.columns);
  const set = Prisma.raw(names.map((name) => `${name} = wanted.${name}`).join(", "));
  const record = Prisma.raw(`id uuid, ${Object.entries(shape.columns).map(([name, type]) => `${name} ${type}`).join(", ")}`);
  const own = Prisma.sql`company_id = ${scope.companyId}::uuid and project_id = ${scope.projectId}::uuid`;
  const ids = rows.map((row) => row.id);
  const kept = JSON.stringify(rows.filter((row) => !row.isNew));
  const added = JSON.stringify(rows.filter((row) => row.isNew));

  await scope.tx.$executeRaw`delete from ${table} where ${own} and not (id = any(${ids}::uuid[]))`;
  await scope.tx.$executeRaw`
    update ${table} set ${Prisma.raw(shape.passing)}
    from (select id as row_id, row_number() over (order by id) as number from ${table} where ${own}) passing
    where ${own} and id = passing.row_id`;
  await scope.tx.$executeRaw`
    update ${table} set ${set} from jsonb_to_recordset(${kept}::jsonb) as wanted(${record})
    where ${own} and ${table}.id = wanted.id`;
  await scope.tx.$executeRaw`
    insert into ${table} (company_id, project_id, id, ${Prisma.raw(names.join(", "))})
    select ${scope.companyId}::uuid, ${scope.projectId}::uuid, id, ${Prisma.raw(names.join(", "))}
    from jsonb_to_recordset(${added}::jsonb) as wanted(${record})`;
}
