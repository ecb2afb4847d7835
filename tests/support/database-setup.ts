import { startTestCluster } from "./test-cluster.ts";

export async function setup(): Promise<() => Promise<void>> {
  const cluster = await startTestCluster();
  return cluster.stop;
}
