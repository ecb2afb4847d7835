import "server-only";
import { importFileInput } from "#lib/contracts/columns.ts";
import { notFound, ok } from "#lib/kernel/result.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { findImport } from "./import-store.ts";

/** A schedule as it was uploaded, so that anyone can look up where a size came from. */
export const getImportFile = projectUseCase("columns.getImportFile", "schedule.import", importFileInput, async (scope, { importId }) => {
  const found = await findImport(scope, importId);
  return found ? ok(found) : notFound("import");
});
