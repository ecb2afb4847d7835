import "server-only";
import { projectInput } from "#lib/contracts/projects.ts";
import { ok } from "#lib/kernel/result.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { listClampKindRows, toClampKind } from "../projects/clamp-store.ts";
import { projectHead, readRules } from "../projects/project-head.ts";
import { listLevels, listMarks, readProject } from "../projects/store.ts";
import { sampleColumn } from "./sample-column.ts";
import { startValues } from "./start-values.ts";

/** What the calculators start from in this project; also for one that has no column yet. */
export const startWorkings = projectUseCase("workings.startWorkings", "workings.use", projectInput, async (scope) => {
  const row = await readProject(scope);
  const { id, name, units } = projectHead(row);
  const rules = readRules(row);
  const kinds = await listClampKindRows(scope);
  const column = sampleColumn(rules, { levels: await listLevels(scope), marks: await listMarks(scope), isUs: units === "us" }, kinds.map(toClampKind));
  const { ply, backing } = rules.shutterRule;
  return ok({
    project: { id, name, units },
    values: startValues(rules, column, units === "us"),
    sources: { ply: ply.source, backing: backing.source, clamp: column.clamp?.source ?? null, clampName: column.clamp?.name ?? null },
  });
});
