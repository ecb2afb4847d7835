import { m2 } from "#lib/kernel/units.ts";
import type { Millimetres } from "#lib/kernel/units.ts";
import type { TimberCapacity } from "#lib/trade/engineering/backing/timber-capacity.ts";
import { BACKING_SOURCE } from "#lib/trade/engineering/clamps/clamp-demands.ts";
import type { PressureEnvelope } from "#lib/trade/engineering/pour-conditions.ts";
import { footUplift } from "#lib/trade/engineering/pressure/resultant.ts";
import { term } from "#lib/trade/engineering/working.ts";
import type { Working } from "#lib/trade/engineering/working.ts";
import { laid } from "./face-geometry.ts";
import type { ClampCheck } from "#lib/trade/engineering/clamps/clamp-strength.ts";
import type { ClampAnswer } from "#lib/trade/engineering/clamps/clamp-layout.ts";
import { EXAMPLE_MARK } from "./example-rule.ts";
import type { PairStrength } from "./face-strength.ts";
import type { Check, Panel, ShutterInput, Warning } from "./form-set.ts";
import type { PanelLayout } from "./panels.ts";
import type { ClampKind, ShutterRule } from "./shutter-rule.ts";

const NEARLY_USED_UP = 0.95;

/** What a leading hand should look at although every check passes. */
export function boxWarnings(input: ShutterInput, layouts: readonly PanelLayout[], kind: ClampKind, checks: readonly Check[], pourHeight: Millimetres): readonly Warning[] {
  const { rule, formHeight } = input;
  const warnings: Warning[] = [];
  const warn = (code: Warning["code"], values: Warning["values"], message: string) => warnings.push({ code, values, message });
  const heaviest = layouts.reduce((a, b) => (b.panel.weight > a.panel.weight ? b : a)).panel;
  if (heaviest.weight > rule.twoPersonLift)
    warn("heavy-panel", { face: heaviest.face, weightKg: Math.round(heaviest.weight), limitKg: rule.twoPersonLift }, `Panel ${heaviest.face} weighs about ${Math.round(heaviest.weight)} kg, over the two-person lift of ${rule.twoPersonLift} kg: plan a crane or more hands.`);
  if (formHeight > rule.backing.stockLength)
    warn("joint-in-backing", { formHeightMm: formHeight, stockLengthMm: rule.backing.stockLength }, `Backing timbers of ${formHeight} mm are longer than the stock of ${rule.backing.stockLength} mm: the checks hold for timbers in one length, so a joint in them must be designed.`);
  const wide = layouts.filter((layout) => layout.strips.length > 1).map((layout) => layout.panel.face);
  if (wide.length > 0) warn("vertical-ply-joint", { faces: wide.join(", ") }, `Panels ${wide.join(", ")} are wider than a sheet: their upright ply joints lie on a timber.`);
  const examples = [rule.ply, rule.backing, kind].filter((part) => part.source.startsWith(EXAMPLE_MARK)).length;
  if (examples > 0) warn("example-figures", { count: examples }, "Ply, timber or clamp figures are examples: replace them by the supplier's and hirer's own before use.");
  const most = Math.max(...checks.map((check) => check.utilisation));
  if (most > NEARLY_USED_UP) warn("utilisation-high", { percent: Math.round(most * 100) }, `A check is used to ${Math.round(most * 100)} %: keep closely to the rise rate and the clamp heights.`);
  if (pourHeight < formHeight) warn("pour-below-form", { pourHeightMm: pourHeight, formHeightMm: formHeight }, `Checked for concrete up to ${pourHeight} mm, not to the top of the form.`);
  return warnings;
}

type Strengths = { readonly across: PairStrength; readonly along: PairStrength };

/** The derivation in the order of the design: pressure, ply of both pairs, timber, clamps, and what would lift the form. */
export function boxWorking(rule: ShutterRule, envelope: PressureEnvelope, timber: TimberCapacity, strengths: Strengths, clamped: { kind: ClampKind; clamp: readonly ClampCheck[]; answer: ClampAnswer }, panels: readonly Panel[]): readonly Working[] {
  const boards = [strengths.across, strengths.along].map((pair) => ({ ...pair.board.working, title: `Faces ${pair.pair}: ${pair.board.working.title}` }));
  return [...envelope.working, ...boards, timberWorking(rule, timber), clampWorking(rule, timber, strengths, clamped), upliftWorking(rule, envelope, panels)];
}

function timberWorking(rule: ShutterRule, timber: TimberCapacity): Working {
  const { breadth, depth } = laid(rule.backing);
  const { bendingStress, shearStress, modulus, source } = rule.backing;
  return {
    title: "Backing timber",
    inputs: [term("b", breadth, "mm"), term("d", depth, "mm"), term("f", bendingStress, "N/mm2"), term("f_v", shearStress, "N/mm2"), term("E", modulus, "N/mm2")],
    formula: "M = f b d2 / 6; V = 2/3 f_v b d; EI = E b d3 / 12",
    steps: [term("V", timber.shear, "kN"), term("EI", timber.stiffness, "kN.m2")],
    result: term("M", timber.moment, "kN.m"),
    source: `Elastic theory of the rectangular section; values: ${source}`,
  };
}

const PART_NAMES = { clamp: "side of a clamp", arm: "arm in bending", wedge: "wedge" } as const;

function clampWorking(rule: ShutterRule, timber: TimberCapacity, strengths: Strengths, clamped: { kind: ClampKind; clamp: readonly ClampCheck[]; answer: ClampAnswer }): Working {
  const { demands, heights, use } = clamped.answer;
  const share = Math.max(strengths.across.share, strengths.along.share);
  const side = Math.max(strengths.across.side, strengths.along.side);
  const { moment, shear, deflectionOverSpan: bend, largestReaction } = demands;
  return {
    title: "Backing over the clamps, and the clamps",
    inputs: [
      term("clamp heights", heights.join(", "), "mm"), term("timber's share of the face", share, "m"), term("wider concrete side", side, "m"),
      ...clamped.clamp.map(({ part, side, capacity, unit }) => term(`${PART_NAMES[part]}, faces ${side === "across" ? "A, C" : "B, D"}, may take`, capacity, unit)), term("deflection limit L /", rule.deflectionRatio, ""),
    ],
    formula: "continuous beam over the clamps under p(z); M, V, d times the share; side F = reaction times the side, arm F (2 x - s) / 8, wedge F / 2",
    steps: [
      term(`M, ${Math.round(moment.at)} mm up`, moment.value * share, "kN.m"), term("M allowed", timber.moment, "kN.m"),
      term(`V one depth from the clamp, ${Math.round(shear.at)} mm up`, shear.value * share, "kN"), term("V allowed", timber.shear, "kN"),
      term(`deflection, ${Math.round(bend.at)} mm up: L /`, timber.stiffness / (bend.value * share), ""),
      term(`largest clamp force, ${Math.round(largestReaction.at)} mm up`, largestReaction.value * side, "kN"),
    ],
    result: term("largest use", use, ""),
    source: `${BACKING_SOURCE}; clamp: ${clamped.kind.source}`,
  };
}

const KN_PER_KG = 9.80665 / 1000;

function upliftWorking(rule: ShutterRule, envelope: PressureEnvelope, panels: readonly Panel[]): Working {
  const round = panels.reduce((sum, { width }) => sum + width, 0);
  const edges = m2((round * rule.ply.thickness) / 1e6);
  const weight = panels.reduce((sum, panel) => sum + panel.weight, 0) * KN_PER_KG;
  return {
    title: "Uplift if concrete gets under the panels",
    inputs: [term("p at the foot", envelope.limit, "kPa"), term("panel widths together", round, "mm"), term("ply thickness", rule.ply.thickness, "mm")],
    formula: "U = p A, A the lower edges of the ply",
    steps: [term("A", edges, "m2"), term("weight of the panels, without clamps", weight, "kN")],
    result: term("U, the most there can be; 0 while the foot is sealed", footUplift(envelope.limit, edges), "kN"),
    source: "Statics of fluid pressure; sealing and holding down the foot: common practice, no source",
  };
}
