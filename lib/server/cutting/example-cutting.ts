import "server-only";
import type { CuttingRule } from "#lib/contracts/planning/cutting.ts";
import { EXAMPLE_MARK } from "#lib/trade/shutter/example-rule.ts";

type Made = { readonly ply: { readonly sheetLength: number; readonly sheetWidth: number }; readonly backing: { readonly stockLength: number } };

/** To start from: the sheet and the timber the form sets are made with, at made-up prices. Kerf and offcut limits are common practice, no source. */
export const exampleCutting = ({ ply, backing }: Made): CuttingRule => ({
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
    { use: "fillet", lengthMm: 3000, price: 350, onHand: null },
  ],
  source: `${EXAMPLE_MARK}: no supplier's price; replace it by your own before ordering`,
});
