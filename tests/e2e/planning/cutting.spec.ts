import { expect } from "@playwright/test";
import { as, expectAccessible, openProject, PHONE, test } from "../site.ts";

test("the leading hand plans the cuts of a level on the phone and asks for fewer sets", async ({ browser, heard }) => {
  const hand = await as("leading hand", browser, heard, PHONE);
  const project = await openProject(hand);
  await hand.goto(`${project}/gear/cutting`);
  await expect(hand.getByRole("heading", { name: "Cutting plan", level: 1 })).toBeVisible();
  await hand.getByRole("link", { name: /^Level 1/ }).click();
  await expect(hand.getByRole("main").getByText(/: Level 1$/)).toBeVisible({ timeout: 30_000 });
  // That level is cut already, so nothing is asked for until somebody says how many.
  const askFor = async (sets: string) => {
    for (const field of await hand.getByRole("textbox", { name: /^Sets of/ }).all()) await field.fill(sets);
    await hand.getByRole("button", { name: "Plan the cuts" }).click();
  };
  await askFor("3");
  const said = hand.getByText(/no plan can use fewer/).first();
  await expect(said).toBeVisible({ timeout: 30_000 });
  const sheetsOf = async () => Number(/^(\d+) sheets?;/.exec(await said.innerText())?.[1]);
  const all = await sheetsOf();
  await expect(hand.getByRole("figure", { name: /^Sheets? 1( |$)/ })).toBeVisible();

  await askFor("1");
  await expect.poll(sheetsOf, { timeout: 30_000 }).toBeLessThan(all);
  await expectAccessible(hand);
  const overflow = await hand.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  expect(overflow).toBeLessThanOrEqual(0);
});

test("the office puts in its own sheets and the plan follows", async ({ browser, heard }) => {
  const office = await as("office", browser, heard);
  const project = await openProject(office, "Osierfield Clinic");
  await office.goto(`${project}/set-up/stock`);
  await office.getByRole("textbox", { name: /^Price each .* of row 1/ }).first().fill("91.50");
  await office.getByLabel("Source of the prices").fill("Merchant's list of the test");
  await office.getByRole("button", { name: "Save the stock" }).click();
  await expect(office.getByText("Saved. Cutting plans follow it from now on.")).toBeVisible();
  await office.goto(`${project}/gear/cutting`);
  await expect(office.getByRole("row", { name: /to buy 91\.50 USD/ })).toBeVisible({ timeout: 30_000 });
});

test("the office accepts a reuse plan; stripping a column gives the one above its set, and the cut with it", async ({ browser, heard }) => {
  const office = await as("office", browser, heard);
  const project = await openProject(office);
  await office.goto(`${project}/gear/reuse`);
  await office.getByRole("button", { name: /^Accept all / }).click({ timeout: 60_000 });
  await expect(office.getByRole("heading", { name: "Spoken for" })).toBeVisible({ timeout: 30_000 });
  await expectAccessible(office);

  // A/2 is poured and stands in its own set; its four panels go to one column above.
  for (const level of await office.locator("details > summary").all()) await level.click();
  const waiting = office.getByRole("listitem").filter({ has: office.getByRole("button", { name: "Withdraw" }) }).filter({ hasText: "on A/2 until that is stripped" }).first();
  const above = (await waiting.getByRole("link").first().getAttribute("href")) ?? "";
  const panel = (await waiting.getByRole("link", { name: /^P-/ }).first().getAttribute("href")) ?? "";
  const hand = await as("leading hand", browser, heard, PHONE);
  await hand.goto(above);
  await expect(hand.getByRole("region", { name: "Now" })).toContainText("Next: cut");
  await expect(hand.getByRole("heading", { name: "Its panels" })).toBeVisible();
  await expectAccessible(hand);

  await hand.goto(panel);
  await expect(hand.getByRole("heading", { name: "Coming columns" })).toBeVisible();
  await hand.getByRole("main").getByRole("link", { name: /^[A-E]\/\d/ }).first().click();
  await hand.getByRole("group", { name: "Stages" }).getByRole("button", { name: /^stripped/ }).click();
  // Poured yesterday at 09:40: before that hour the strip time still runs, and a reason is asked for.
  await hand.addLocatorHandler(hand.getByRole("button", { name: "Record with this reason" }), async () => {
    await hand.getByLabel("Reason").fill("The engineer let it go at 20 MPa");
    await hand.getByRole("button", { name: "Record with this reason" }).click();
  });
  await hand.getByRole("button", { name: "Record as stripped" }).click();
  await expect(hand.getByRole("region", { name: "Now" })).toContainText("Nothing more to do");
  await expect(hand.getByRole("region", { name: "History" }).getByRole("button", { name: /^Withdraw : stripped/ })).toBeVisible();
  await hand.goto(above);
  await expect(hand.getByRole("region", { name: "Now" })).toContainText("Next: stood");
});
