import "./steps/require-node.mjs";

import("./steps/test-run.mjs")
  .then(({ testRun }) => testRun())
  .then((failed) => process.exit(failed === 0 ? 0 : 1));
