import type { IncomingMessage } from "node:http";
import type { RecordAnswer } from "#lib/contracts/progress.ts";
import { STAGES } from "#lib/trade/progress/stages.ts";
import { aCompany } from "#tests/support/builders/a-company.ts";
import { aTick } from "#tests/support/builders/a-site-event.ts";
import { startBuiltServer } from "#tests/support/built-server.ts";
import { aTower } from "./parts/a-tower.ts";
import { withBenchDatabase } from "./parts/bench-database.ts";
import { below, median, percentile, type Row } from "./parts/row.ts";
import { open, signInOver, type SignedIn } from "./parts/signed-in.ts";

const CONNECTIONS = 200;
const [WARM_UP, TICKS] = [5, 40];
const BUDGET_MS = 300;
const PATIENCE_MS = 10_000;

/** When each number of the project arrived at each connection. */
class Ears {
  private readonly arrivals = new Map<number, number[]>();
  private readonly waiting = new Map<number, () => void>();

  listen(stream: IncomingMessage): void {
    let rest = "";
    stream.setEncoding("utf8").on("data", (chunk: string) => {
      const messages = (rest + chunk).split("\n\n");
      rest = messages.pop() ?? "";
      for (const message of messages) this.note(Number(/^id: (\d+)$/m.exec(message)?.[1] ?? NaN));
    });
  }

  private note(seq: number): void {
    const at = this.arrivals.get(seq) ?? [];
    this.arrivals.set(seq, at);
    if (at.push(performance.now()) === CONNECTIONS) this.waiting.get(seq)?.();
  }

  async everywhere(seq: number): Promise<readonly number[]> {
    const known = this.arrivals.get(seq) ?? [];
    if (known.length < CONNECTIONS) {
      await new Promise<void>((fulfil, reject) => {
        const late = setTimeout(() => reject(new Error(`Number ${seq} reached ${this.arrivals.get(seq)?.length ?? 0} of ${CONNECTIONS}.`)), PATIENCE_MS);
        this.waiting.set(seq, () => {
          clearTimeout(late);
          fulfil();
        });
      });
    }
    return this.arrivals.get(seq) ?? [];
  }
}

async function tick({ url, headers }: SignedIn, projectId: string, columnId: string, round: number): Promise<number> {
  const body = JSON.stringify({ projectId, events: [aTick(columnId, STAGES[round % 4] ?? "cut")] });
  const answer = await fetch(`${url}/api/site-events`, { method: "POST", body, headers: { ...headers, "content-type": "application/json" } });
  if (!answer.ok) throw new Error(`The tick was answered with ${answer.status}.`);
  return ((await answer.json()) as RecordAnswer).seq;
}

/** From the press on one phone to its arrival on 200 others: request, judgement, commit, wake-up, reading and all the streams. */
export async function run(): Promise<Row[]> {
  return withBenchDatabase(async (databaseUrl) => {
    const company = await aCompany("Live Bench");
    const tower = await aTower(company.owner, "Live");
    const server = await startBuiltServer(databaseUrl);
    const streams: IncomingMessage[] = [];
    try {
      const who = await signInOver(server.url, company.emailOf("leading hand"));
      const since = await tick(who, tower.projectId, tower.columnIds[0] ?? "", 0);
      const ears = new Ears();
      for (let count = 0; count < CONNECTIONS; count += 1) {
        const stream = await open(who, `/api/live/${tower.projectId}?since=${since}`);
        if (stream.statusCode !== 200) throw new Error(`A stream was answered with ${stream.statusCode}.`);
        ears.listen(stream);
        streams.push(stream);
      }
      const waits: number[] = [];
      for (let round = 0; round < WARM_UP + TICKS; round += 1) {
        const pressed = performance.now();
        const arrivals = await ears.everywhere(await tick(who, tower.projectId, tower.columnIds[round + 1] ?? "", round));
        if (round >= WARM_UP) waits.push(...arrivals.map((at) => at - pressed));
      }
      const row = below(`tick → arrived on ${CONNECTIONS} live connections, p95 of ${waits.length.toLocaleString("en")}`, percentile(waits, 0.95), BUDGET_MS, "ms");
      return [{ ...row, measured: `${row.measured} (median ${Math.round(median(waits))})` }];
    } finally {
      for (const stream of streams) stream.destroy();
      await server.stop();
    }
  });
}
