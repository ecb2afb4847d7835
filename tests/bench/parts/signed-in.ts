import { Agent, request, type IncomingMessage } from "node:http";
import { PASSWORD } from "#tests/support/builders/a-company.ts";

export type SignedIn = { readonly url: string; readonly headers: Readonly<Record<string, string>> };
export type Answer = { readonly status: number; readonly bytes: number; readonly encoding: string; readonly ms: number };

const cookiesOf = (response: Response): string => response.headers.getSetCookie().map((cookie) => cookie.split(";")[0]).join("; ");

/** Signs in at a running app as a browser does. */
export async function signInOver(url: string, email: string): Promise<SignedIn> {
  const first = await fetch(`${url}/api/auth/csrf`);
  const { csrfToken } = (await first.json()) as { csrfToken: string };
  const body = new URLSearchParams({ csrfToken, email, password: PASSWORD, json: "true" });
  const second = await fetch(`${url}/api/auth/callback/credentials`, { method: "POST", body, headers: { cookie: cookiesOf(first) }, redirect: "manual" });
  const cookie = cookiesOf(second);
  if (!cookie.includes("session-token")) throw new Error(`Not signed in: ${second.status} ${await second.text()}`);
  return { url, headers: { cookie } };
}

const agent = new Agent({ keepAlive: true, maxSockets: Infinity });

/** Opens an address without unpacking what comes, so that it can be weighed. */
export const open = ({ url, headers }: SignedIn, path: string, more: Readonly<Record<string, string>> = {}): Promise<IncomingMessage> =>
  new Promise((fulfil, reject) => {
    request(`${url}${path}`, { agent, headers: { ...headers, ...more } }, fulfil).on("error", reject).end();
  });

export async function weigh(who: SignedIn, path: string): Promise<Answer> {
  const started = performance.now();
  const answer = await open(who, path, { "accept-encoding": "gzip, br", accept: "text/html" });
  let bytes = 0;
  for await (const chunk of answer) bytes += (chunk as Buffer).length;
  return { status: answer.statusCode ?? 0, bytes, encoding: answer.headers["content-encoding"] ?? "none", ms: performance.now() - started };
}
