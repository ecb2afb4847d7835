import "server-only";
import { columnGear, type ColumnGear } from "#lib/contracts/hire/column-gear.ts";
import type { ProjectRow } from "../../projects/store.ts";

export const readColumnGear = (project: ProjectRow): ColumnGear => (project.columnGear === null ? { rows: [] } : columnGear.parse(project.columnGear));
