import { choiceOf, isTicked, numberOf, numberOrNull, textOf } from "#app/_ui/form/read-form.ts";
import { JOINT_TYPES } from "#lib/trade/shutter/shutter-rule.ts";

const readPly = (data: FormData) => ({
  label: textOf(data, "shutterRule.ply.label"),
  thickness: numberOf(data, "shutterRule.ply.thickness"),
  sheetLength: numberOf(data, "shutterRule.ply.sheetLength"),
  sheetWidth: numberOf(data, "shutterRule.ply.sheetWidth"),
  density: numberOf(data, "shutterRule.ply.density"),
  bendingStiffness: numberOf(data, "shutterRule.ply.bendingStiffness"),
  momentCapacity: numberOf(data, "shutterRule.ply.momentCapacity"),
  shearCapacity: numberOf(data, "shutterRule.ply.shearCapacity"),
  source: textOf(data, "shutterRule.ply.source"),
});

const readBacking = (data: FormData) => ({
  label: textOf(data, "shutterRule.backing.label"),
  width: numberOf(data, "shutterRule.backing.width"),
  depth: numberOf(data, "shutterRule.backing.depth"),
  orientation: choiceOf(data, "shutterRule.backing.orientation", ["edge", "flat"]),
  stockLength: numberOf(data, "shutterRule.backing.stockLength"),
  density: numberOf(data, "shutterRule.backing.density"),
  modulus: numberOf(data, "shutterRule.backing.modulus"),
  bendingStress: numberOf(data, "shutterRule.backing.bendingStress"),
  shearStress: numberOf(data, "shutterRule.backing.shearStress"),
  source: textOf(data, "shutterRule.backing.source"),
});

const readSpacing = (data: FormData) => ({
  module: numberOf(data, "shutterRule.clampSpacing.module"),
  firstMin: numberOf(data, "shutterRule.clampSpacing.firstMin"),
  firstMax: numberOf(data, "shutterRule.clampSpacing.firstMax"),
  topMax: numberOf(data, "shutterRule.clampSpacing.topMax"),
  smallestGap: numberOf(data, "shutterRule.clampSpacing.smallestGap"),
  largestGap: numberOf(data, "shutterRule.clampSpacing.largestGap"),
});

/** What the shutter page posts, as the contract of the rule wants it. */
export const readRule = (data: FormData) => ({
  joint: choiceOf(data, "shutterRule.joint", JOINT_TYPES),
  overPair: choiceOf(data, "shutterRule.overPair", ["A-C", "B-D"]),
  ply: readPly(data),
  backing: readBacking(data),
  edgeProud: numberOf(data, "shutterRule.edgeProud"),
  largestTimberCentres: numberOf(data, "shutterRule.largestTimberCentres"),
  filletLeg: numberOrNull(data, "shutterRule.filletLeg"),
  baseCleats: isTicked(data, "shutterRule.baseCleats"),
  jointCleats: isTicked(data, "shutterRule.jointCleats"),
  kickerHeight: numberOf(data, "shutterRule.kickerHeight"),
  clampSpacing: readSpacing(data),
  deflectionRatio: numberOf(data, "shutterRule.deflectionRatio"),
  twoPersonLift: numberOf(data, "shutterRule.twoPersonLift"),
});
