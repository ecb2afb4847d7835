import { Logger, run } from "graphile-worker";
import { workerAddress } from "#lib/launch/serve/worker-address.ts";
import { crontab, taskList } from "#lib/server/platform/jobs.ts";

const logger = new Logger(() => (level, message) => {
  if (level === "error" || level === "warning") console.error(`worker: ${message}`);
});

// Keeps its tables in a schema of their own, which it brings up to date itself.
const runner = await run({
  connectionString: workerAddress(), taskList, crontab, logger, schema: "graphile_worker", concurrency: 2, pollInterval: 2_000,
});
await runner.promise;
