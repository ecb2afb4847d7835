import { unreachable, type Failure } from "#lib/kernel/result.ts";
import { RULE_WORDING } from "./wording/rules.ts";
import type { Wording } from "./wording/shape.ts";

export const fillIn = (text: string, values: Readonly<Record<string, string | number>>): string =>
  text.replace(/\{(\w+)\}/g, (gap, name: string) => String(values[name] ?? gap));

const plainWords = (code: string): string => code.replace(/[-_.]+/g, " ");

function ruleWording(code: string, values: Readonly<Record<string, string | number>>): Wording {
  const known = RULE_WORDING[code];
  if (known) return { title: fillIn(known.title, values), todo: fillIn(known.todo, values) };
  const given = Object.entries(values).map(([name, value]) => `${plainWords(name)} ${value}`).join(", ");
  return { title: `Not possible: ${plainWords(code)}.`, todo: given ? `It rests on: ${given}.` : "Check the entries and try again." };
}

/** The words for a failure; the switch is closed, so a new kind must get its words here. */
export function wordFailure(failure: Failure): Wording {
  switch (failure.kind) {
    case "not-signed-in":
      return { title: "You are signed out.", todo: "Sign in again; nothing you entered on this phone is lost." };
    case "not-allowed":
      return { title: "Your role does not cover this.", todo: "Ask the owner to do it or to change your role." };
    case "not-found":
      return { title: `There is no such ${plainWords(failure.what)}.`, todo: "It may have been removed, or the address is wrong. Go back to the list." };
    case "conflict":
      return { title: `Somebody changed this ${plainWords(failure.what)} meanwhile.`, todo: "Load the page again, look at the new state, then repeat your change if it still holds." };
    case "invalid":
      return { title: failure.problems.length === 1 ? "One entry needs another look." : `${failure.problems.length} entries need another look.`, todo: failure.problems.map((problem) => problem.message).join(" ") };
    case "rule":
      return ruleWording(failure.code, failure.values);
    default:
      return unreachable(failure);
  }
}
