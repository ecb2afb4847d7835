import "./steps/require-node.mjs";

import("./steps/prepare.mjs")
  .then(({ prepare }) => prepare())
  .then((ready) => process.exit(ready ? 0 : 1));
