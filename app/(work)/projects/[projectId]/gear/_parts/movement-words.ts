import type { MovementKind } from "#lib/trade/gear/ledger.ts";

/** What a movement was, in the words of the trade. */
export const MOVEMENT_WORDS: Readonly<Record<MovementKind, string>> = {
  opening: "Taken into the ledger", delivered: "Delivered", returned: "Returned", moved: "Moved", gathered: "Gathered", stood: "Column stood", clamped: "Column clamped",
  stripped: "Column stripped", cleaned: "Cleaned", made: "Panels made", "cut up": "Cut up", "cut down": "Panel cut down", lost: "Lost", found: "Found", scrapped: "Scrapped",
  settled: "Discrepancy settled", reversed: "Taken back",
};
