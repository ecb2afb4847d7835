import NextAuth from "next-auth";
import { sessionOptions } from "#lib/server/gate/session.ts";
import { signIn } from "#lib/server/people/sign-in.ts";

const handler = (request: Request, context: unknown): Promise<Response> =>
  NextAuth(sessionOptions(signIn))(request, context) as Promise<Response>;

export { handler as GET, handler as POST };
