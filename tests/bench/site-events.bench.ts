import pg from "pg";
import { STAGES } from "#lib/trade/progress/stages.ts";
import { recordSiteEvents } from "#lib/server/progress/record-site-events.ts";
import type { Caller } from "#lib/server/gate/caller.ts";
import { aCompany } from "#tests/support/builders/a-company.ts";
import { aTick } from "#tests/support/builders/a-site-event.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";
import { aTower, type Tower } from "./parts/a-tower.ts";
import { withBenchDatabase } from "./parts/bench-database.ts";
import { median, type Row } from "./parts/row.ts";

const BATCH = 50;
const BUDGET = 0.5;
const ROUNDS = 5;
const ROUND_MS = 2500;

async function ratePerSecond(work: () => Promise<number>): Promise<number> {
  const started = performance.now();
  let done = 0;
  while (performance.now() - started < ROUND_MS) done += await work();
  return (done * 1000) / (performance.now() - started);
}

/** The next ticks of the tower: every column once through a stage, then the next stage. */
function ticksOf({ columnIds }: Tower) {
  let next = 0;
  return (count: number) =>
    Array.from({ length: count }, () => {
      const [stage, place] = [Math.floor(next / columnIds.length) % 4, next % columnIds.length];
      next += 1;
      return aTick(columnIds[place] ?? "", STAGES[stage] ?? "cut");
    });
}

function recorder(by: Caller, tower: Tower) {
  const ticks = ticksOf(tower);
  return async (count: number): Promise<number> => {
    const { answers } = valueOf(await recordSiteEvents(by, { projectId: tower.projectId, events: ticks(count) }));
    const accepted = answers.filter(({ outcome }) => outcome === "accepted" || outcome === "repeat").length;
    if (accepted !== count) throw new Error(`Only ${accepted} of ${count} were accepted.`);
    return accepted;
  };
}

/** The same rows, one by one, each its own transaction, with nothing asked and nothing kept besides. */
async function rawInserter(databaseUrl: string, tower: Tower, by: Caller) {
  const client = new pg.Client({ connectionString: databaseUrl });
  await client.connect();
  await client.query("create table if not exists raw_event (like site_event including all)");
  const ticks = ticksOf(tower);
  let seq = 0;
  const insert = async (): Promise<number> => {
    const [event] = ticks(1);
    if (!event) return 0;
    await client.query({
      name: "raw", text: "insert into raw_event values ($1, $2, $3, $4, $5, $6, $7, $8, $9, now(), $10, 'accepted')",
      values: [by.companyId, tower.projectId, event.id, (seq += 1), event.columnId, event.kind, JSON.stringify({ stage: "cut" }), null, event.happenedAt, by.personId],
    });
    return 1;
  };
  return { insert, end: () => client.end() };
}

/** Accepted by the whole use case against the database's own speed, in turns, so that both see the same machine. */
export async function run(): Promise<Row[]> {
  return withBenchDatabase(async (databaseUrl) => {
    const { leadingHand, owner } = await aCompany("Events Bench");
    const record = recorder(leadingHand, await aTower(owner, "Events"));
    const raw = await rawInserter(databaseUrl, await aTower(owner, "Raw"), owner);
    const rates = { raw: [] as number[], batches: [] as number[], singles: [] as number[] };
    for (let round = 0; round < ROUNDS; round += 1) {
      rates.raw.push(await ratePerSecond(raw.insert));
      rates.batches.push(await ratePerSecond(() => record(BATCH)));
      rates.singles.push(await ratePerSecond(() => record(1)));
    }
    await raw.end();
    const [base, batches, singles] = [median(rates.raw), median(rates.batches), median(rates.singles)];
    const text = (rate: number): string => `${(rate / base).toFixed(2)} (${Math.round(rate).toLocaleString("en")}/s ÷ ${Math.round(base).toLocaleString("en")}/s)`;
    return [
      { what: `site events accepted in batches of ${BATCH} ÷ raw single-row inserts`, measured: text(batches), budget: `≥ ${BUDGET}`, ok: batches / base >= BUDGET },
      { what: "site events accepted one at a time ÷ raw single-row inserts", measured: text(singles), budget: "no budget", ok: true },
    ];
  });
}
