import "server-only";
import type { NextAuthOptions } from "next-auth";
import { getServerSession } from "next-auth/next";
import Credentials from "next-auth/providers/credentials";
import { cache } from "react";
import { env } from "../platform/env.ts";
import type { Caller } from "./caller.ts";

type Claims = { companyId?: unknown; personId?: unknown; sessionEpoch?: unknown };
const DAYS_SIGNED_IN = 30;

function callerOf(claims: Claims | null | undefined): Caller | null {
  const { companyId, personId, sessionEpoch } = claims ?? {};
  return typeof companyId === "string" && typeof personId === "string" && typeof sessionEpoch === "number"
    ? { companyId, personId, sessionEpoch }
    : null;
}

type SignIn = (given: { email: string; password: string; address: string }) => Promise<
  { ok: true; value: Caller } | { ok: false; failure: { kind: string; code?: string } }
>;

/**
 * Sessions are signed tokens that name a person and nothing more; role and standing are read at every request.
 * The use case that checks a password is handed in, so that the gate does not depend on the areas behind it.
 */
export function sessionOptions(signIn: SignIn): NextAuthOptions {
  return {
    secret: env().NEXTAUTH_SECRET,
    session: { strategy: "jwt", maxAge: DAYS_SIGNED_IN * 86_400 },
    pages: { signIn: "/sign-in" },
    providers: [
      Credentials({
        credentials: { email: {}, password: {} },
        async authorize(given, request) {
          const forwarded: unknown = request.headers?.["x-forwarded-for"];
          const address = typeof forwarded === "string" ? (forwarded.split(",")[0] ?? "").trim().slice(0, 100) : "direct";
          const result = await signIn({ email: given?.email ?? "", password: given?.password ?? "", address });
          if (!result.ok) throw new Error(result.failure.code ?? result.failure.kind);
          return { id: result.value.personId, ...result.value };
        },
      }),
    ],
    callbacks: {
      // The epoch is taken from a sign-in alone: a session that could name its own would outlive the change meant to end it.
      jwt: ({ token, user }) => (user ? Object.assign(token, callerOf(user as Claims)) : token),
      session: ({ session, token }) => ({ ...session, caller: callerOf(token as Claims) }),
    },
  };
}

/** Who the request claims to be, unsealed once for each request; the gate checks it. */
export const currentCaller = cache(async (): Promise<Caller | null> => {
  const session = await getServerSession(sessionOptions(() => Promise.reject(new Error("not at the door"))));
  return callerOf((session as { caller?: Claims } | null)?.caller);
});
