import { ensureChromium } from "./chromium.ts";
import { startWholeApp } from "./started-app.ts";

/** Before the browser journeys: a browser, and the product running with the demo company. */
export default async function setup(): Promise<() => Promise<void>> {
  process.env["CHROMIUM_PATH"] = ensureChromium();
  const app = await startWholeApp();
  process.env["E2E_URL"] = app.url;
  process.env["E2E_DATABASE_URL"] = app.databaseUrl;
  return app.stop;
}
