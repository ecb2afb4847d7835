import { expect } from "@playwright/test";
import { as, expectAccessible, openGatherList, openProject, PHONE, test } from "../site.ts";

test("the office writes an order from what is to be bought; the leading hand receives it at the truck, more only with a reason", async ({ browser, heard }) => {
  const office = await as("office", browser, heard);
  const project = await openProject(office);
  await office.goto(`${project}/gear/orders/buy`);
  await expect(office.getByRole("region", { name: "What to buy by size and day" })).toBeVisible({ timeout: 20_000 });
  await expectAccessible(office);
  await office.getByRole("link", { name: "Order all of it" }).click();
  const number = `PO ${Date.now()}`;
  await office.getByRole("combobox", { name: "Merchant" }).fill("Coppice & Dray Timber");
  await office.getByLabel("Order number").fill(number);
  const ply = office.getByRole("group", { name: /^Film-faced ply/ });
  await ply.getByLabel("Pieces").fill("12");
  await office.getByRole("button", { name: "Write the order down" }).click();
  await expect(office.getByRole("heading", { name: `Order ${number}`, level: 1 })).toBeVisible();

  const hand = await as("leading hand", browser, heard, PHONE);
  await hand.goto(`${new URL(office.url()).pathname}/receive`);
  await expectAccessible(hand);
  await hand.getByLabel("Docket number").fill("CD 1");
  await hand.getByRole("group", { name: /^Film-faced ply/ }).getByLabel("Taken").fill("15");
  await hand.getByRole("button", { name: "Take it in" }).click();
  await expect(hand.getByRole("alert").filter({ hasText: "3 over" })).toBeVisible();
  await hand.getByLabel("Why more came").fill("Full pack of fifteen");
  await hand.getByRole("button", { name: "Take it in" }).click();
  await expect(hand.getByText("15 taken: Film-faced ply")).toBeVisible();
  await expect(hand.getByRole("button", { name: /^Reverse/ })).toHaveCount(0);
});

test("the office takes a receipt back with a reason, and has the orders as a table", async ({ browser, heard }) => {
  const office = await as("office", browser, heard);
  const project = await openProject(office);
  await office.goto(`${project}/gear/orders`);
  await office.getByRole("link", { name: "LW-PO 31" }).click();
  await office.getByRole("button", { name: "Reverse docket CD 88214" }).click();
  await office.getByLabel("Reason").fill("Another order's docket");
  await office.getByRole("button", { name: "Reverse it" }).click();
  await expect(office.getByText(/^Reversed by Ines Okada/)).toBeVisible();
  const table = await office.request.get(`${project}/gear/orders/table`);
  expect(table.headers()["content-type"]).toContain("text/csv");
  expect(await table.text()).toContain("LW-PO 31");
});

test("what is gathered for a column leaves the list and lies at the column until it is taken back", async ({ browser, heard }) => {
  const hand = await as("leading hand", browser, heard, PHONE);
  const project = await openProject(hand);
  const wedges = await openGatherList(hand, project, hand.getByText(/^A\/1 C1/).first());
  await expectAccessible(hand);
  await wedges.getByRole("button", { name: "At the column" }).click();
  await expect(wedges).toHaveCount(0);
  const movement = hand.getByRole("listitem").filter({ hasText: "Gathered" }).filter({ hasText: "Wedge" }).filter({ hasText: "A/1" }).first();
  await movement.getByRole("button", { name: "Take back" }).click();
  await hand.getByLabel("Why").fill("Another column");
  await hand.getByRole("button", { name: "Take it back" }).click();
  await expect(wedges).toBeVisible();
});
