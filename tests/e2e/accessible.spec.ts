import { as, expectAccessible, expectEachAccessible, listen, openProject, PHONE, test } from "./site.ts";

test("the door passes the accessibility rules", async ({ page, heard }) => {
  listen(page, heard);
  await page.goto("/sign-in");
  await expectAccessible(page);
});

/** By what they are about, so that no one journey grows too long. */
const SET_UP = ["set-up", "set-up/levels", "set-up/grid", "set-up/marks", "set-up/shutter", "set-up/pour", "set-up/stages", "set-up/schedule", "set-up/stock"];
const GEAR = ["gear", "gear/movements", "gear/panels", "gear/reuse", "gear/labels?kind=column"];
const ORDERS = ["gear/cutting", "gear/gather", "gear/count", "gear/orders", "gear/orders/new", "gear/items"];
const HIRE = ["pours", "hire", "hire/dockets", "hire/dockets/new?kind=return", "hire/return-plan", "hire/terms", "hire/invoices", "hire/invoices/new", "hire/invoices/new?by=hand"];

test("the pages of columns and people pass the accessibility rules at a phone and at a desk", async ({ browser, heard }) => {
  const owner = await as("owner", browser, heard, PHONE);
  await expectAccessible(owner);
  const project = await openProject(owner);
  await expectAccessible(owner);
  const column = (await owner.getByRole("link", { name: /^Open/ }).first().getAttribute("href")) ?? "";
  await expectEachAccessible(owner, [column, `${project}/columns`, "/people", "/clamps", "/account", "/projects/new"]);
});

for (const [what, pages] of [["set-up", SET_UP], ["gear", GEAR], ["cutting, gathering and orders", ORDERS], ["hire and pours", HIRE]] as const) {
  test(`the pages of ${what} pass the accessibility rules at a phone and at a desk`, async ({ browser, heard }) => {
    const owner = await as("owner", browser, heard, PHONE);
    const project = await openProject(owner);
    await expectEachAccessible(owner, pages.map((page) => `${project}/${page}`));
  });
}
