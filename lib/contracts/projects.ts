import { z } from "zod";
import { isTimeZone } from "#lib/kernel/days.ts";
import { between, day, id, line, wholeMm } from "./fields.ts";
import { clampKindInput, pourConditions, shutterRule } from "./shutter.ts";

export const UNIT_SYSTEMS = ["metric", "us"] as const;
export type UnitSystem = (typeof UNIT_SYSTEMS)[number];

export const GATE_POLICY = z.object({
  "set-out checked": z.boolean(),
  "cage released": z.boolean(),
  "pre-pour released": z.boolean(),
  "strip released": z.boolean(),
});

export const progressRule = z.object({
  plumbing: z.enum(["before-pour", "during-pour"]),
  stripAfterHours: between(1, 240, "Hours before stripping"),
  gates: GATE_POLICY,
});

const currency = z.string().trim().toUpperCase().regex(/^[A-Z]{3}$/, "Give a three-letter currency code of ISO 4217, as AUD.");

const basics = {
  name: line(120),
  site: line(200),
  timeZone: z.string().refine(isTimeZone, "Give an IANA time zone, as Australia/Brisbane."),
  units: z.enum(UNIT_SYSTEMS),
  currency,
  workingDays: z.array(z.number().int().min(1).max(7)).min(1, "Choose at least one working day.").max(7)
    .transform((days) => [...new Set(days)].sort()),
  startsOn: day.nullable().default(null),
};

export const createProjectInput = z.object(basics);
export const changeProjectInput = z.object({ projectId: id, version: z.number().int(), ...basics, progressRule });
export const projectInput = z.object({ projectId: id });
/** What the calculators start from: one column, or where none is named a usual one of the project. */
export const startWorkingsInput = projectInput.extend({ columnId: id.optional() });
export const archiveProjectInput = z.object({ projectId: id, archived: z.boolean() });
export const changeShutterRuleInput = z.object({ projectId: id, shutterRule });
export const changePourConditionsInput = z.object({ projectId: id, pourConditions });

const level = z.object({
  id: id.optional(),
  name: line(40),
  elevationMm: wholeMm(-200_000, 1_500_000),
  slabDepthMm: wholeMm(0, 3000),
  beamDepthMm: wholeMm(0, 3000),
});
/** The whole list at once: what is missing from it is taken out, unless a column still uses it. */
/** Of the list as it was read; another stamp by now means that somebody else has saved it. Left out, the list is saved whatever it has become. */
const seen = z.string().max(64).optional();

export const saveLevelsInput = z.object({ projectId: id, seen, levels: z.array(level).max(200, "Not more than 200 levels.") });

const gridLine = z.object({
  id: id.optional(),
  axis: z.enum(["along-x", "along-y"]),
  name: line(12),
  offsetMm: wholeMm(-5_000_000, 5_000_000),
});
export const saveGridLinesInput = z.object({
  projectId: id,
  seen,
  gridLines: z.array(gridLine).max(600, "Not more than 600 grid lines."),
});

/** A side of a column; tenths of a millimetre, so that 12 in. stays 304.8 mm. */
const side = between(100, 3000, "Size in mm").transform((value) => Math.round(value * 10) / 10);

export const section = {
  shape: z.enum(["rectangle", "circle"]),
  widthMm: side,
  depthMm: side,
};
const mark = z.object({ id: id.optional(), name: line(40), ...section });
export const saveMarksInput = z.object({ projectId: id, seen, marks: z.array(mark).max(2000, "Not more than 2,000 marks.") });

export const saveClampKindInput = clampKindInput;
