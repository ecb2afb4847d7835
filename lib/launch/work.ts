import { Logger, run } from "graphile-worker";
import { workerAddress } from "#lib/launch/serve/worker-address.ts";
import { crontab, taskList } from "#lib/server/platform/jobs.ts";
import { returnCrontab, returnJobs } from "#lib/server/returns/compute-plan.ts";

const logger = new Logger(() => (level, message) => {
  if (level === "error" || level === "warning") console.error(`worker: ${message}`);
});

// Keeps its tables in a schema of their own, which it brings up to date itself.
const runner = await run({
  connectionString: workerAddress(), taskList: { ...taskList, ...returnJobs }, crontab: `${crontab}\n${returnCrontab}`, logger, schema: "graphile_worker", concurrency: 2, pollInterval: 2_000,
});
await runner.promise;
