import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { fingerprint, projectFolder, textOf } from "./project.mjs";
import { runNode } from "./run.mjs";

const stamp = "prisma/generated/.made-from";

const source = () => fingerprint(["prisma/schema", "prisma.config.ts", "node_modules/prisma/package.json"]);

/** Makes the database client from prisma/schema when that has changed; false when it could not. */
export async function ensureClient() {
  if (textOf(stamp) === source()) return true;
  const env = {
    // The command wants a schema engine to exist, which it would download; it does not use it to generate.
    PRISMA_SCHEMA_ENGINE_BINARY: process.execPath,
    PRISMA_HIDE_UPDATE_MESSAGE: "1",
    CHECKPOINT_DISABLE: "1",
  };
  const status = await runNode(["node_modules/prisma/build/index.js", "generate", "--no-hints"], { env, quiet: true });
  if (status !== 0) return false;
  writeFileSync(join(projectFolder, stamp), source());
  return true;
}
