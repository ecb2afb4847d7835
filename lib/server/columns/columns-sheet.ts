import "server-only";
import type { ColumnsSheet } from "#lib/contracts/columns-sheet.ts";
import { projectInput } from "#lib/contracts/projects.ts";
import { ok } from "#lib/kernel/result.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { readRules } from "../projects/project-head.ts";
import { listGridLines, listLevels, listMarks, readProject } from "../projects/store.ts";
import { sheetRowsJson } from "./store.ts";

export const getColumnsSheet = projectUseCase("columns.getColumnsSheet", "progress.read", projectInput, async (scope) => {
  // Read first: what a tick adds meanwhile comes again over the live feed, and is harmless twice.
  const project = await readProject(scope);
  const { progressRule, shutterRule } = readRules(project);
  const levels = (await listLevels(scope)).map(({ id, name, elevationMm, slabDepthMm, beamDepthMm }) => ({ id, name, elevationMm, slabDepthMm, beamDepthMm }));
  const gridLines = (await listGridLines(scope)).map(({ id, axis, name, offsetMm }) => ({ id, axis, name, offsetMm }));
  const marks = (await listMarks(scope)).map(({ id, name, shape, widthMm, depthMm }) => ({ id, name, shape, widthMm, depthMm }));
  const sheet: ColumnsSheet = {
    projectId: project.id,
    projectName: project.name,
    units: project.units === "us" ? "us" : "metric",
    timeZone: project.timeZone,
    plumbing: progressRule.plumbing,
    kickerMm: shutterRule.kickerHeight,
    seq: Number(project.lastSeq),
    levels, gridLines, marks,
    rowsJson: await sheetRowsJson(scope, { levels, gridLines, marks }),
  };
  return ok(sheet);
});
