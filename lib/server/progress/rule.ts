import "server-only";
import type { z } from "zod";
import type { progressRule } from "#lib/contracts/projects.ts";
import { instantOf, toDay } from "#lib/kernel/days.ts";
import { USUAL_BACKDATE_MINUTES, type ProgressRule } from "#lib/trade/progress/progress-rule.ts";
import type { Gate, Stage } from "#lib/trade/progress/stages.ts";
import type { ProjectHead } from "../projects/project-head.ts";

/** The stage before which each gate is to be released. Common practice, no source. */
const STAGE_BEHIND: Record<Gate, Stage> = {
  "set-out checked": "stood",
  "cage released": "stood",
  "pre-pour released": "poured",
  "strip released": "stripped",
};

export function toProgressRule(rule: z.output<typeof progressRule>, project: ProjectHead): ProgressRule {
  const requiredGates: Partial<Record<Stage, Gate[]>> = {};
  for (const [gate, stage] of Object.entries(STAGE_BEHIND) as [Gate, Stage][]) {
    if (rule.gates[gate]) (requiredGates[stage] ??= []).push(gate);
  }
  return {
    plumbing: rule.plumbing,
    stripAfterHours: rule.stripAfterHours,
    requiredGates,
    backdateMinutes: USUAL_BACKDATE_MINUTES,
    startsAt: project.startsOn === null ? null : instantOf(toDay(project.startsOn), "00:00", project.timeZone),
  };
}
