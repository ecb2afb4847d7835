import { signIn } from "next-auth/react";
import type { Failure } from "#lib/kernel/result.ts";

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
