import { randomBytes } from "node:crypto";
import { chmod, mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Cluster, startCluster } from "./cluster.ts";
import { freePort } from "./free-port.ts";

/** A throw-away PostgreSQL in the system's temporary folder. */
export async function startTemporaryCluster(): Promise<Cluster> {
  const folder = await mkdtemp(join(tmpdir(), "shutterwright-"));
  await chmod(folder, 0o755);
  const remove = (): Promise<void> => rm(folder, { recursive: true, force: true });
  try {
    const password = randomBytes(18).toString("hex");
    const cluster = await startCluster({ folder, port: await freePort(), password, durable: false });
    return { ...cluster, stop: () => cluster.stop().then(remove) };
  } catch (error) {
    await remove();
    throw error;
  }
}
