import { existsSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { areaBreaches, arrowBreaches, clientBreaches, cycles, gatewayBreaches, MAY_IMPORT, rowOf } from "./arrows.ts";
import { planted, theTree } from "./source-tree.ts";

describe("which way imports point", () => {
  it("has a row for every folder, and no row without one", () => {
    expect(theTree().filter(({ path }) => rowOf(path) === undefined).map(({ path }) => path)).toEqual([]);
    expect(Object.keys(MAY_IMPORT).filter((folder) => !existsSync(folder))).toEqual([]);
  });

  it("keeps to the table", () => expect(arrowBreaches(theTree())).toEqual([]));

  it.each([
    ["lib/kernel/planted.ts", `import { can } from "#lib/access/permissions.ts";`],
    ["lib/trade/schedule/planted.ts", `import { STAGES } from "../progress/stages.ts";`],
    ["lib/trade/engineering/planted.ts", `import type { FormSet } from "#lib/trade/shutter/form-set.ts";`],
    ["lib/contracts/planted.ts", `export { now } from "#lib/server/platform/clock.ts";`],
    ["lib/server/gate/planted.ts", `import { signIn } from "../people/sign-in.ts";`],
    ["lib/server/people/planted.ts", `const page = await import("#app/(work)/page.tsx");`],
    ["lib/elsewhere/planted.ts", ""],
  ])("notices %s saying %s", (path, text) => expect(planted(arrowBreaches, { [path]: text })).toHaveLength(1));

  it("knows no import against a gateway", () => expect(gatewayBreaches(theTree())).toEqual([]));

  it.each([
    ["lib/server/people/planted.ts", `import { Prisma } from "#prisma/generated/client.ts";`],
    ["app/planted.ts", `import type { Person } from "#prisma/generated/client.ts";`],
    ["app/planted.ts", `import { listLevels } from "#lib/server/projects/store.ts";`],
    ["app/planted.ts", `import { transaction } from "#lib/server/platform/db.ts";`],
    ["app/planted.ts", `import { sealCompany } from "#lib/server/gate/scope.ts";`],
  ])("notices %s saying %s at a gateway", (path, text) => expect(planted(gatewayBreaches, { [path]: text })).toHaveLength(1));

  it("has no area use another's use case", () => expect(areaBreaches(theTree())).toEqual([]));
  it("notices an area that does", () => {
    expect(planted(areaBreaches, { "lib/server/people/planted.ts": `import { createProject } from "../projects/projects.ts";` })).toHaveLength(1);
  });

  it("never leads from a client part to the server", () => expect(clientBreaches(theTree())).toEqual([]));
  it("notices a client part that reaches it by a detour, but lets it call an action", () => {
    const detour = { "lib/contracts/planted.ts": `import "#lib/server/platform/clock.ts";`, "app/planted.tsx": `"use client";\nimport "#lib/contracts/planted.ts";` };
    expect(planted(clientBreaches, detour)).toHaveLength(1);
    expect(planted(clientBreaches, { "app/planted.tsx": `"use client";\nimport type { Today } from "#lib/server/progress/get-today.ts";` })).toHaveLength(1);
    const action = { "app/planted-action.ts": `"use server";\nimport "#lib/server/people/sign-in.ts";`, "app/planted.tsx": `"use client";\nimport "./planted-action.ts";` };
    expect(planted(clientBreaches, action)).toEqual([]);
  });

  it("goes round in no circle", () => expect(cycles(theTree())).toEqual([]));
  it("notices a circle", () => {
    const circle = { "lib/kernel/planted-one.ts": `import "./planted-two.ts";`, "lib/kernel/planted-two.ts": `import type { One } from "./planted-one.ts";` };
    expect(planted(cycles, circle)).toHaveLength(1);
  });
});
