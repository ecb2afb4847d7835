import { setBackBreaches, stageBreaches, type ProgressRule } from "./progress-rule.ts";
import { markOf, type FactEvent, type Mark } from "./site-event.ts";
import { placeOf, STAGES, type Gate, type Stage } from "./stages.ts";
import { newlyReached, type Raised, type Standing } from "./standing.ts";
import type { Finding } from "./finding.ts";

/** One step of the fold: where the column stands after a fact. Facts come in the order of the site. */
export function applyFact(standing: Standing, fact: FactEvent, rule: ProgressRule): Standing {
  const mark = markOf(fact);
  switch (fact.kind) {
    case "stage-reached": {
      const added = newlyReached(standing, fact.stage, mark, rule.plumbing);
      const breaches = stageBreaches(standing, added, mark, rule);
      return { ...standing, reached: reach(standing, fact.stage, added, mark), raised: raise(standing, fact, breaches) };
    }
    case "set-back": {
      const breaches = setBackBreaches(standing, fact.to);
      return {
        ...goBack(standing, fact.to),
        setBacks: [...standing.setBacks, { ...mark, to: fact.to, cause: fact.cause }],
        raised: raise(standing, fact, breaches),
      };
    }
    case "gate-released":
      return { ...standing, gates: { [fact.gate]: mark, ...standing.gates } };
    case "gate-revoked":
      return { ...standing, gates: without(standing.gates, fact.gate) };
    case "reading":
      return { ...standing, readings: { ...standing.readings, [fact.when]: { ...mark, offsets_mm: fact.offsets_mm } } };
    case "held":
      return { ...standing, held: standing.held ?? { ...mark, reason: fact.reason } };
    case "hold-lifted":
      return { ...standing, held: null };
    default:
      fact satisfies never;
      return standing;
  }
}

/** The earliest tick says when and by whom; an implied stage ticked later keeps the earlier time it is known to have had. */
function reach(standing: Standing, stage: Stage, added: readonly Stage[], mark: Mark): Standing["reached"] {
  const reached = { ...standing.reached };
  for (const each of added) reached[each] = { ...mark, implied: each !== stage, repeats: 0, last: mark };
  const known = added.includes(stage) ? undefined : reached[stage];
  if (known !== undefined) reached[stage] = { ...known, repeats: known.repeats + 1, last: mark };
  return reached;
}

/**
 * Going back takes off the later stages and never adds one. The pre-pour and strip releases were given for the form
 * as it then was, so they lapse with it; the set-out and the cage are not the form's, so their gates stay until revoked.
 */
function goBack(standing: Standing, to: Stage | null): Standing {
  const undone = STAGES.filter((stage) => placeOf(stage) > placeOf(to));
  if (!undone.some((stage) => standing.reached[stage] !== undefined)) return standing;
  const reached = { ...standing.reached };
  for (const stage of undone) delete reached[stage];
  const gates = { ...standing.gates };
  if (undone.includes("poured")) delete gates["pre-pour released"];
  if (undone.includes("stripped")) delete gates["strip released"];
  const readings = { ...standing.readings };
  if (undone.includes("plumbed")) delete readings["before-pour"];
  if (undone.includes("poured")) delete readings["after-pour"];
  return { ...standing, reached, gates, readings };
}

function without(gates: Standing["gates"], gate: Gate): Standing["gates"] {
  const left = { ...gates };
  delete left[gate];
  return left;
}

const raise = (standing: Standing, fact: FactEvent, breaches: readonly Finding[]): readonly Raised[] => [
  ...standing.raised,
  ...breaches.map((breach) => ({ ...breach, eventId: fact.id, reason: fact.reason })),
];
