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
  "panel-spoken-for": {
    title: "{panel} is spoken for by {column}, {level}, face {face} ({project}).",
    todo: "Load the page again: the plan is worked out anew without it. Or withdraw that line there first.",
  },
  "face-spoken-for": {
    title: "{column}, {level}, face {face} has {panel} already, accepted by {by}.",
    todo: "Load the page again to see what is accepted; withdraw that line first if another panel is to go there.",
  },
  "yield-spoken-for": {
    title: "What comes off {earlier}, face {face}, goes to {column}, {level} already.",
    todo: "Load the page again: the plan is worked out anew without it.",
  },
  "face-wants-nothing": {
    title: "{column}, face {face}, asks for no panel any more.",
    todo: "It was cut, got a set or left the schedule meanwhile. Load the page again.",
  },
  "earlier-line-not-chosen": {
    title: "{column}, {level}, face {face} takes what comes off {earlier}, which is not chosen.",
    todo: "Choose the line of {earlier} too, or leave this one out.",
  },
  "panel-serves-no-more": {
    title: "{panel} cannot serve {column}, {level}, face {face} any more.",
    todo: "It was scrapped, put aside, lost or taken away meanwhile. Load the page again.",
  },
  "panel-back-too-late": {
    title: "{panel} is not back in time for {column}, {level}, face {face}.",
    todo: "Days were moved since the plan was made. Load the page again.",
  },
  "panel-worn-out": {
    title: "{panel} has no use left for {column}, {level}, face {face}.",
    todo: "The pours of a film face are set under Set-up, Stock. Load the page again.",
  },
  "panel-too-small": {
    title: "{panel} does not close {column}, {level}, face {face} any more.",
    todo: "The column's size or the panel changed since the plan was made. Load the page again.",
  },
  "offcut-used-already": {
    title: "Of the offcuts {length} × {width} mm there are only {there} left.",
    todo: "Another plan was cut from them meanwhile. Load the page again: the plan is worked out anew from what lies there now.",
  },
  "timber-offcut-used-already": {
    title: "Of the offcuts {item} there are only {there} left.",
    todo: "Another plan was cut from them meanwhile. Load the page again: the plan is worked out anew from what lies there now.",
  },
  "cutting-plan-changed": {
    title: "The cutting plan of {level} does not hold any more.",
    todo: "Columns, sizes or the stock changed since it was shown. Load the page again and cut by the new plan.",
  },
  "planner-busy": {
    title: "{waiting} questions wait already to be worked out.",
    todo: "Wait a few seconds and load the page again.",
  },
  "plan-overran": {
    title: "This plan was not ready after {seconds} seconds and was given up.",
    todo: "Ask again; if it stays so, plan fewer form sets at once, a few marks at a time.",
  },
};
