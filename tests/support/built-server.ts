import { freePort } from "#lib/launch/database/free-port.ts";
import { buildWhenStale } from "#lib/launch/steps/build.ts";
import { startApp, untilServing } from "#lib/launch/serve/children.ts";

export type BuiltServer = { readonly url: string; stop(): Promise<void> };

const secret = "a secret shared by every instance of one test run";

/** One instance of the built app over the given database; start two for two. Builds first when the build is stale. */
export async function startBuiltServer(databaseUrl: string): Promise<BuiltServer> {
  await buildWhenStale();
  const terms = { databaseUrl, port: await freePort(), host: "127.0.0.1", secret };
  const app = startApp(terms);
  if (await untilServing(terms, app)) return { url: `http://127.0.0.1:${terms.port}`, stop: app.stop };
  await app.stop();
  throw new Error("The built app did not start.");
}
