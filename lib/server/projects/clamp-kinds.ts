import "server-only";
import { nothing } from "#lib/contracts/people.ts";
import { asClampKind, clampKindInput, retireClampKindInput } from "#lib/contracts/shutter.ts";
import { brokenRule, notFound, ok } from "#lib/kernel/result.ts";
import { companyUseCase } from "../gate/use-case.ts";
import { clashOf } from "../platform/db.ts";
import { newId } from "../platform/new-id.ts";
import { listClampKindRows, retireClampKindRow, writeClampKind, type ClampKindRow } from "./clamp-store.ts";

export const toClampKind = (row: ClampKindRow) => ({
  id: row.id, name: row.name, minSize: row.minSizeMm, maxSize: row.maxSizeMm, sideCapacity: row.sideCapacityKn,
  barLength: row.barLengthMm, barDepth: row.barDepthMm, barThickness: row.barThicknessMm, weight: row.weightKg, source: row.source,
});

export const listClampKinds = companyUseCase("projects.listClampKinds", "project.read", nothing, async (scope) =>
  ok((await listClampKindRows(scope)).map((row) => ({ ...asClampKind(toClampKind(row)), isExample: row.isExample }))),
);

export const saveClampKind = companyUseCase("projects.saveClampKind", "clamp-kind.change", clampKindInput, async (scope, input) => {
  const { id: given, ...kind } = input;
  try {
    const id = given ?? newId();
    if (!(await writeClampKind(scope, id, given === undefined, kind))) return notFound("clamp kind");
    return ok({ id });
  } catch (error) {
    if (clashOf(error) === "duplicate") return brokenRule("clamp-name-taken", { name: input.name });
    throw error;
  }
});

export const retireClampKind = companyUseCase(
  "projects.retireClampKind", "clamp-kind.change", retireClampKindInput, async (scope, { clampKindId }) =>
    (await retireClampKindRow(scope, clampKindId)) ? ok(null) : notFound("clamp kind"),
);
