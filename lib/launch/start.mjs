import "./steps/require-node.mjs";

async function start() {
  const { prepare } = await import("./steps/prepare.mjs");
  const { runTypeScript } = await import("./steps/run.mjs");
  return (await prepare()) ? runTypeScript("lib/launch/serve/start.ts") : 1;
}

start().then((status) => process.exit(status));
