import type { Family, PlaceKind } from "#lib/trade/gear/ledger.ts";

export const FAMILY_WORDS: Readonly<Record<Family, string>> = {
  "clamp set": "clamp set", "clamp bar": "single clamp bar", wedge: "wedge", prop: "prop", panel: "panel", sheet: "sheet of ply", timber: "timber", other: "other gear",
};

export const PLACE_WORDS: Readonly<Record<PlaceKind, string>> = {
  supplier: "hired from", bought: "where bought gear comes from", yard: "yard of the company", truck: "truck", "cleaning bay": "cleaning bay", rack: "rack", column: "column",
  lost: "what is lost", scrapped: "what is scrapped",
};
