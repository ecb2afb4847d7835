import type { Wording } from "./shape.ts";

/** Why there is no cutting plan. */
export const CUTTING_WORDING: Readonly<Record<string, Wording>> = {
  "part-larger-than-sheet": {
    title: "A panel piece of {widthMm} × {heightMm} mm comes out of no sheet.",
    todo: "Panels are made up from pieces as large as the sheet under Set-up, Shutter: give that sheet under Set-up, Stock too, or trim less.",
  },
  "part-longer-than-stock": {
    title: "A timber of {lengthMm} mm is longer than the longest length, {longestMm} mm.",
    todo: "Add a longer length under Set-up, Stock.",
  },
  "sheets-run-out": {
    title: "The sheets on the rack do not yield all {parts} pieces.",
    todo: "Under Set-up, Stock, leave the count of a sheet empty where it can be bought.",
  },
  "stock-runs-out": {
    title: "The timbers on the rack do not yield all {parts} pieces.",
    todo: "Under Set-up, Stock, leave the count of a length empty where it can be bought.",
  },
  "no-timber-stock": {
    title: "No length is kept for {material}.",
    todo: "Add the lengths it comes in under Set-up, Stock.",
  },
  "planner-busy": {
    title: "{waiting} plans are being worked out already.",
    todo: "Wait a few seconds and load the page again.",
  },
  "plan-overran": {
    title: "This plan was not ready after {seconds} seconds and was given up.",
    todo: "Plan fewer form sets at once, a few marks at a time.",
  },
};
