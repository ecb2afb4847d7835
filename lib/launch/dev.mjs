import "./steps/require-node.mjs";

async function dev() {
  const { prepare } = await import("./steps/prepare.mjs");
  const { runTypeScript } = await import("./steps/run.mjs");
  return (await prepare()) ? runTypeScript("lib/launch/serve/start.ts", { args: ["--dev"] }) : 1;
}

dev().then((status) => process.exit(status));
