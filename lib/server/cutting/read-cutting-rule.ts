import "server-only";
import { cuttingRule, type CuttingRule } from "#lib/contracts/planning/cutting.ts";
import { EXAMPLE_MARK } from "#lib/trade/shutter/example-rule.ts";
import { readRules } from "../projects/project-head.ts";
import type { ProjectRow } from "../projects/store.ts";

const TEN_FEET = 3048;

type Made = { readonly ply: { readonly sheetLength: number; readonly sheetWidth: number }; readonly backing: { readonly stockLength: number } };

/** To start from: the sheet and the timber the form sets are made with, at made-up prices. Kerf and offcut limits are common practice, no source. */
const exampleCutting = ({ ply, backing }: Made, units: string): CuttingRule => ({
  kerfMm: 3,
  trimMm: 0,
  mayTurn: false,
  keepLongMm: 600,
  keepShortMm: 200,
  endTrimMm: 0,
  keepTimberMm: 600,
  sheets: [{ lengthMm: ply.sheetLength, widthMm: ply.sheetWidth, price: 7800, onHand: null }],
  timbers: [
    { use: "backing", lengthMm: backing.stockLength, price: 2600, onHand: null },
    { use: "fillet", lengthMm: units === "us" ? TEN_FEET : 3000, price: 350, onHand: null },
  ],
  panelUses: 7,
  recutEach: 1200,
  carryEach: 400,
  source: `${EXAMPLE_MARK}: no supplier's price; replace it by your own before ordering`,
});

/** What was saved, else the examples. */
export const readCuttingRule = (project: ProjectRow): CuttingRule =>
  project.cuttingRule === null ? exampleCutting(readRules(project).shutterRule, project.units) : cuttingRule.parse(project.cuttingRule);
