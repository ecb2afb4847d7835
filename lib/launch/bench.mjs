import "./steps/require-node.mjs";

async function bench() {
  const { prepare } = await import("./steps/prepare.mjs");
  const { runTypeScript } = await import("./steps/run.mjs");
  return (await prepare()) ? runTypeScript("tests/support/run-benches.ts", { args: process.argv.slice(2) }) : 1;
}

bench().then((status) => process.exit(status));
