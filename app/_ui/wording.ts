import { unreachable, type Failure } from "#lib/kernel/result.ts";

/** What happened, and what to do about it. `{name}` stands for a value the failure carries. */
export type Wording = { readonly title: string; readonly todo: string };

/** Wording of broken rules by their code; an area adds its own rows here. */
export const RULE_WORDING: Readonly<Record<string, Wording>> = {
  "wrong-sign-in": {
    title: "E-mail and password do not match.",
    todo: "Check both and try again; the owner can send a new invitation if the password is lost.",
  },
  "too-many-tries": {
    title: "Too many tries.",
    todo: "Wait {minutes} min and try again.",
  },
  "stage-out-of-order": {
    title: "{column} is not ready for {stage}.",
    todo: "Record {missing} first, or say why it was done in another order.",
  },
  "gate-not-released": {
    title: "{column}: {gate} is not released.",
    todo: "Get the release first. If it has happened already, record it with the reason; the owner is told.",
  },
  "strip-too-early": {
    title: "{column} may not be stripped before {earliest}.",
    todo: "Wait for the strip time, or record the reason; the owner is told.",
  },
  "undo-too-late": {
    title: "The time for undo has run out.",
    todo: "Withdraw the entry from the column's history and give the reason.",
  },
};

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
