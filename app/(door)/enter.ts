import { signIn } from "next-auth/react";
import type { Failure } from "#lib/kernel/result.ts";
import { paths } from "#app/paths.ts";

const SIGN_IN_RULES: Readonly<Record<string, Failure>> = {
  "too-many-sign-ins": { kind: "rule", code: "too-many-sign-ins", values: { minutes: 15 } },
};
const WRONG: Failure = { kind: "rule", code: "wrong-sign-in", values: {} };

/** Signs in from the browser. Whatever went wrong with the pair is worded the same, so nobody learns which addresses exist. */
export async function enter(email: string, password: string): Promise<Failure | undefined> {
  const answer = await signIn("credentials", { email, password, redirect: false });
  if (answer?.ok && !answer.error) return undefined;
  return SIGN_IN_RULES[answer?.error ?? ""] ?? WRONG;
}

/** Signs in with a pair that was just set and opens a page; should that not work, the door is shown with the address filled in. */
export async function enterNow(email: string, password: string, next: string): Promise<void> {
  const refused = await enter(email, password);
  window.location.assign(refused ? paths.signIn(next, { email, welcome: "yes" }) : next);
}
