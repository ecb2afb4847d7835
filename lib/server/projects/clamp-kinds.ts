import "server-only";
import { nothing } from "#lib/contracts/people.ts";
import { asClampKind, clampKindInput, retireClampKindInput } from "#lib/contracts/shutter.ts";
import { brokenRule, notFound, ok } from "#lib/kernel/result.ts";
import { companyUseCase } from "../gate/use-case.ts";
import { clashOf } from "../platform/db.ts";
import { newId } from "../platform/new-id.ts";
import { listClampKindRows, retireClampKindRow, toClampKind, writeClampKind } from "./clamp-store.ts";

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
