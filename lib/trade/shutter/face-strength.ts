import type { Metres } from "#lib/kernel/units.ts";
import { m, mm, toMetres } from "#lib/kernel/units.ts";
import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import { widestTimberShare } from "#lib/trade/engineering/backing/timber-capacity.ts";
import type { TimberCapacity } from "#lib/trade/engineering/backing/timber-capacity.ts";
import { BACKING_SOURCE } from "#lib/trade/engineering/clamps/clamp-demands.ts";
import type { ClampDemands } from "#lib/trade/engineering/clamps/clamp-demands.ts";
import { CLAMP_SOURCE } from "#lib/trade/engineering/clamps/clamp-strength.ts";
import type { ClampCheck } from "#lib/trade/engineering/clamps/clamp-strength.ts";
import type { PressureEnvelope } from "#lib/trade/engineering/pour-conditions.ts";
import { sheathing } from "#lib/trade/engineering/sheathing/sheathing.ts";
import type { SheathingAnswer } from "#lib/trade/engineering/sheathing/sheathing.ts";
import { refusal } from "#lib/trade/engineering/working.ts";
import type { Refusal } from "#lib/trade/engineering/working.ts";
import { laid, plyInterval, sideOf, timberCentres } from "./face-geometry.ts";
import type { Side } from "./face-geometry.ts";
import type { Check, CheckElement, CheckKind } from "./form-set.ts";
import type { ClampKind, FacePair, ShutterRule } from "./shutter-rule.ts";

/** A pair of opposite faces, alike but for being turned. */
export type PairStrength = {
  readonly pair: FacePair;
  readonly side: Metres;
  readonly timberCount: number;
  /** Of the concrete side that the hardest-worked timber carries. */
  readonly share: Metres;
  readonly board: SheathingAnswer;
};

/** Timbers closer than this leave no room for a hammer. */
const CLOSEST_CLEAR = 20;

/** Fewest backing timbers with which the ply passes at the foot and the centres keep to the rule; never under `leastTimbers`. */
export function sizePair(section: Side, rule: ShutterRule, envelope: PressureEnvelope, pair: FacePair, leastTimbers: number): Result<PairStrength, Refusal> {
  const face = pair === "A-C" ? "A" : "B";
  const ply = plyInterval(section, rule, face);
  const side = toMetres(sideOf(section, face));
  const { breadth } = laid(rule.backing);
  const widest = Math.min(rule.largestTimberCentres, rule.ply.sheetWidth / 2);
  const run = ply.to - ply.from + 2 * rule.edgeProud - breadth;
  let last: SheathingAnswer | null = null;
  for (let spans = Math.max(1, leastTimbers - 1, Math.ceil(run / widest - 1e-9)); run / spans >= breadth + CLOSEST_CLEAR; spans += 1) {
    const centres = timberCentres(ply, rule, spans + 1).map((at) => m(at / 1000));
    const overhang = Math.max(0, side / 2 + (centres[0] ?? 0), side / 2 - (centres[spans] ?? 0));
    const board = sheathing({ board: rule.ply, pressure: envelope.limit, centres: m(run / spans / 1000), spans, supportWidth: toMetres(mm(breadth)), overhang: m(overhang), ratio: rule.deflectionRatio });
    if (!board.ok) return board;
    last = board.value;
    if (board.value.use > 1) continue;
    const share = widestTimberShare(centres, side);
    return share.ok ? ok({ pair, side, timberCount: spans + 1, share: share.value, board: board.value }) : share;
  }
  return fail(tooClose(pair, run, breadth, last));
}

function tooClose(pair: FacePair, run: number, breadth: number, last: SheathingAnswer | null): Refusal {
  return refusal({
    limit: `use of the ply on faces ${pair} with as many timbers as fit`,
    given: last === null ? "no room for two timbers" : Math.round(last.use * 1000) / 1000,
    allowed: "up to 1",
    source: last?.working.source ?? "Geometry of the panel",
    message: `The edge timbers stand ${Math.round(run)} mm apart and each takes ${breadth} mm. Slow the pour, use a stronger ply, or narrower timbers.`,
  });
}

function checkOf(faces: FacePair, element: CheckElement, what: CheckKind, demand: number, capacity: number, unit: string, at: number, source: string): Check {
  return { element, what, faces, demand, capacity, unit, utilisation: demand / capacity, at: mm(at), source };
}

/** What the layout asks of one pair of faces, against what each part can carry. */
export function pairChecks(strength: PairStrength, rule: ShutterRule, timber: TimberCapacity, demands: ClampDemands, clamped: { readonly kind: ClampKind; readonly clamp: readonly ClampCheck[] }): readonly Check[] {
  const { pair, share, board } = strength;
  const { moment, shear, deflectionOverSpan: bend, largestReaction } = demands;
  const source = board.working.source;
  return [
    checkOf(pair, "ply", "bending", board.moment, rule.ply.momentCapacity, "kN.m/m", 0, source),
    checkOf(pair, "ply", "shear", board.shear, rule.ply.shearCapacity, "kN/m", 0, source),
    checkOf(pair, "ply", "deflection", board.deflection * 1000, board.allowedDeflection * 1000, "mm", 0, source),
    checkOf(pair, "backing", "bending", moment.value * share, timber.moment, "kN.m", moment.at, BACKING_SOURCE),
    checkOf(pair, "backing", "shear", shear.value * share, timber.shear, "kN", shear.at, BACKING_SOURCE),
    checkOf(pair, "backing", "deflection", (1000 * bend.value * share) / timber.stiffness, 1000 / rule.deflectionRatio, "mm/m", bend.at, BACKING_SOURCE),
    ...clamped.clamp
      .filter((one) => (one.side === "across") === (pair === "A-C"))
      .map((one) => checkOf(pair, one.part, one.part === "arm" ? "bending" : "force", largestReaction.value * one.perReaction, one.capacity, one.unit, largestReaction.at, one.part === "clamp" ? clamped.kind.source : `${CLAMP_SOURCE}; ${clamped.kind.source}`)),
  ];
}
