import { expect } from "@playwright/test";
import { as, expectAccessible, listen, openProject, PHONE, test } from "./site.ts";

test("the door passes the accessibility rules", async ({ page, heard }) => {
  listen(page, heard);
  await page.goto("/sign-in");
  await expectAccessible(page);
});

for (const [device, options] of [["desk", {}], ["phone", PHONE]] as const) {
  test(`the work pages pass the accessibility rules at a ${device}`, async ({ browser, heard }) => {
    const owner = await as("owner", browser, heard, options);
    await expectAccessible(owner);
    const project = await openProject(owner);
    await expectAccessible(owner);
    const column = (await owner.getByRole("link", { name: /^Open/ }).first().getAttribute("href")) ?? "";
    const pages = ["columns", "set-up", "set-up/levels", "set-up/grid", "set-up/marks", "set-up/shutter", "set-up/pour", "set-up/stages", "set-up/schedule", "set-up/stock", "gear/cutting", "gear/reuse", "gear/labels?kind=column",
      "pours", "hire", "hire/dockets", "hire/dockets/new?kind=return", "hire/terms", "hire/invoices", "hire/invoices/new", "hire/invoices/new?by=hand"];
    for (const path of [column, ...pages.map((page) => `${project}/${page}`), "/people", "/clamps", "/account", "/projects/new"]) {
      await owner.goto(path);
      await expect(owner.getByRole("heading", { level: 1 })).toBeVisible();
      await expectAccessible(owner);
      const overflow = await owner.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
      expect(overflow, `${path} scrolls sideways`).toBeLessThanOrEqual(0);
    }
  });
}
