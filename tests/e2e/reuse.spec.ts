import { expect } from "@playwright/test";
import { as, expectAccessible, openProject, PHONE, test } from "./site.ts";

test("the office accepts a reuse plan; a column stripped below gives the one above its set, and the cut with it", async ({ browser, heard }) => {
  const office = await as("office", browser, heard);
  const project = await openProject(office);
  await office.goto(`${project}/gear/reuse`);
  await office.getByRole("button", { name: /^Accept all / }).click({ timeout: 60_000 });
  await expect(office.getByRole("heading", { name: "Spoken for" })).toBeVisible({ timeout: 30_000 });
  await expectAccessible(office);

  // B/2 on Level 2 stands with its own set; the plan gives each of its panels to a column of Level 3.
  const coming = office.getByRole("listitem").filter({ hasText: /on B\/2 until that is stripped/ }).filter({ hasText: "Withdraw" }).first();
  const column = await coming.getByRole("link").first().innerText();
  const address = (await coming.getByRole("link").first().getAttribute("href")) ?? "";

  const hand = await as("leading hand", browser, heard, PHONE);
  await hand.goto(address);
  await expect(hand.getByRole("heading", { name: `Column ${column}` })).toBeVisible();
  await expect(hand.getByRole("heading", { name: "Its panels" })).toBeVisible();
  await expectAccessible(hand);
});
