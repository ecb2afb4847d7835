import { ClearLine } from "../database/clear-line.ts";
import { keptValue, newSecret, openDataFolder } from "../database/data-folder.ts";
import { startEmbedded } from "../database/embedded.ts";
import { checkExternal } from "../database/external.ts";
import { migrate } from "../migrate.ts";
import { buildWhenStale } from "../steps/build.ts";
import { type AppTerms, type Child, startApp, startSources, startWorker, untilServing } from "./children.ts";
import { type SignIn, loadDemoCompany } from "./demo-sign-ins.ts";
import { AskedToStop, Endings, StopRequest } from "./endings.ts";
import { AlreadyRunning, holdFolder } from "./instance-lock.ts";
import { addressOf, isLoopback, readSettings, refuseTakenPort, type Settings } from "./settings.ts";

const fromSources = process.argv.includes("--dev");
const request = new StopRequest();
const endings = new Endings();

type Database = { readonly url: string; readonly ended: Promise<void>; announce(address: string): void };

const never = new Promise<never>(() => undefined);

async function openDatabase(settings: Settings, folder: string): Promise<Database> {
  if (settings.databaseUrl !== null) {
    await refuseTakenPort(settings);
    await checkExternal(settings.databaseUrl);
    return { url: settings.databaseUrl, ended: never, announce: () => undefined };
  }
  const lock = await holdFolder(folder);
  endings.add(lock.release);
  await refuseTakenPort(settings);
  const database = await startEmbedded(folder);
  endings.add(database.stop);
  return { ...database, announce: lock.announce };
}

function print(address: string, signIns: readonly SignIn[]): void {
  console.log(`Shutterwright is at ${address}`);
  if (signIns.length === 0) return;
  console.log("Sign in to the demo company as");
  for (const { role, email, password } of signIns) console.log(`  ${role.padEnd(14)} ${email.padEnd(36)} ${password}`);
  console.log("Ctrl-C stops it.");
}

/** A worker that fails takes nothing else down; it is started again after a pause. */
function keepWorking(terms: AppTerms): void {
  let worker: Child | undefined;
  let timer: NodeJS.Timeout | undefined;
  let over = false;
  const begin = (): void => {
    worker = startWorker(terms);
    void worker.ended.then((code) => {
      if (over) return;
      console.error(`The worker stopped (code ${code}); starting it again in 5 seconds.`);
      timer = setTimeout(begin, 5_000);
    });
  };
  endings.add(async () => {
    over = true;
    clearTimeout(timer);
    await worker?.stop();
  });
  begin();
}

/** From its sources the first page is compiled before it answers. */
const COMPILING_MS = 300_000;

async function serve(): Promise<void> {
  const settings = readSettings();
  const folder = await openDataFolder();
  const database = await openDatabase(settings, folder);
  request.throwIfAsked();
  await migrate(database.url);
  request.throwIfAsked();
  if (!fromSources) await buildWhenStale();
  request.throwIfAsked();
  const secret = process.env["NEXTAUTH_SECRET"]?.trim() || (await keptValue(folder, "session-secret", newSecret));
  const terms: AppTerms = { databaseUrl: database.url, secret, port: settings.port, host: settings.host };
  const withDemo = settings.databaseUrl === null && isLoopback(settings.host);
  const signIns = withDemo ? await loadDemoCompany(terms) : [];
  request.throwIfAsked();

  const app = fromSources ? startSources(terms) : startApp(terms);
  endings.add(app.stop);
  keepWorking(terms);
  if (!(await Promise.race([untilServing(terms, app, fromSources ? COMPILING_MS : undefined), request.heard.then(() => true)]))) throw new ClearLine("The server did not start; its messages are above.");
  request.throwIfAsked();
  database.announce(addressOf(settings));
  print(addressOf(settings), signIns);
  await Promise.race([
    request.heard,
    app.ended.then((code) => failUnlessAsked(`The server stopped by itself (code ${code}).`)),
    database.ended.then(() => failUnlessAsked("The database stopped by itself; its log is in the data folder.")),
  ]);
}

function failUnlessAsked(message: string): void {
  request.throwIfAsked();
  throw new ClearLine(message);
}

function report(error: unknown): number {
  if (error instanceof AskedToStop) return 0;
  if (error instanceof AlreadyRunning) {
    console.log(`Shutterwright is already running at ${error.address}`);
    return 0;
  }
  console.error(error instanceof ClearLine ? error.message : error);
  return 1;
}

// The terminal may be gone before the last word is said.
for (const stream of [process.stdout, process.stderr]) stream.on("error", () => undefined);

const status = await serve().then(() => 0, report);
await endings.run();
process.exit(status);
