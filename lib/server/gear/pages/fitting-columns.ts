import "server-only";
import { fittingColumnsInput } from "#lib/contracts/gear.ts";
import { naturalOrder } from "#lib/kernel/natural-order.ts";
import { notFound, ok } from "#lib/kernel/result.ts";
import { misfits } from "#lib/trade/gear/set-fit.ts";
import { columnForm } from "../../columns/column-form.ts";
import { projectUseCase } from "../../gate/use-case.ts";
import { listClampKindRows } from "../../projects/clamp-store.ts";
import { readRules } from "../../projects/project-head.ts";
import { readProject } from "../../projects/store.ts";
import { findSet } from "../panels/set-store.ts";
import { listColumnsWithoutSet } from "../ticks/tick-store.ts";

const MOST = 200;

/** The columns that a set closes and that have none: not stood yet, the lowest level first. */
export const fittingColumns = projectUseCase("gear.fittingColumns", "gear.read", fittingColumnsInput, async (scope, { setId }) => {
  const set = await findSet(scope, setId);
  if (!set) return notFound("form set");
  const given = set.panels.map(({ face, panel }) => ({ face, widthMm: panel.widthMm, heightMm: panel.heightMm }));
  const rules = readRules(await readProject(scope));
  const kinds = await listClampKindRows(scope);
  const fits = new Map<string, boolean>();
  const columns = (await listColumnsWithoutSet(scope)).filter((column) => {
    const key = [column.shape, column.widthMm, column.depthMm, column.formHeightMm, column.headedBy, column.fromLevelId, column.toLevelId].join(" ");
    if (!fits.has(key)) {
      const { formSet } = columnForm(column, rules, kinds);
      fits.set(key, formSet.ok && misfits(formSet.value.panels.map(({ face, width, height }) => ({ face, widthMm: width, heightMm: height })), given).length === 0);
    }
    return fits.get(key) === true;
  });
  columns.sort((left, right) => left.fromLevel.elevationMm - right.fromLevel.elevationMm || naturalOrder(left.gridRef, right.gridRef));
  return ok(columns.slice(0, MOST).map(({ id, gridRef, fromLevel, mark, widthMm, depthMm }) => ({ id, gridRef, level: fromLevel.name, size: `${mark.name}, ${widthMm} × ${depthMm} mm` })));
});
