import "server-only";
import { reservedInput } from "#lib/contracts/planning/reuse.ts";
import { dayIn } from "#lib/kernel/days.ts";
import { ok } from "#lib/kernel/result.ts";
import { projectUseCase } from "../../gate/use-case.ts";
import { projectHead } from "../../projects/project-head.ts";
import { readProject } from "../../projects/store.ts";
import { listReservedLines, type ReservedLine } from "./reserved-lines.ts";
import { listFallen } from "./reserved-store.ts";

export type { ReservedLine };

/** What is spoken for, of one column or of all, and what fell out and has not been replaced. */
export const getReserved = projectUseCase("gear.getReserved", "gear.read", reservedInput, async (scope, { columnId }) => {
  const project = projectHead(await readProject(scope));
  const lines = await listReservedLines(scope, columnId === undefined ? null : [columnId]);
  return ok({ project, lines, fallen: await listFallen(scope, columnId ?? null), today: dayIn(scope.now, project.timeZone), role: scope.member.role });
});
export type ReservedPage = Extract<Awaited<ReturnType<typeof getReserved>>, { ok: true }>["value"];
