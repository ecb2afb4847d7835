import { expect, type Page } from "@playwright/test";
import { as, expectAccessible, openGatherList, openProject, PHONE, test } from "../site.ts";

test("what is gathered without reception stays on the phone, is sent once when it returns, and the office sees it", async ({ browser, heard }) => {
  const hand = await as("leading hand", browser, heard, PHONE);
  const project = await openProject(hand);
  const wedges = await openGatherList(hand, project, hand.getByText(/^B\/1 C2/).last());
  const [pieces = ""] = (await wedges.getAttribute("aria-label"))?.match(/^\d+/) ?? [];
  const taken: number[] = [];
  hand.on("response", (response) => { if (response.url().endsWith("/api/gear-moves")) taken.push(response.status()); });

  await expect.poll(() => hand.evaluate(async () => (await caches.match(location.href)) !== undefined)).toBe(true);
  await hand.context().setOffline(true);
  await wedges.getByRole("button", { name: "At the column" }).click();
  const kept = hand.getByRole("group", { name: /× Wedge for B\/1: at the column$/ });
  await expect(kept).toContainText("saved on this phone");
  await expect(wedges).toHaveCount(0);
  await expect(hand.getByRole("button", { name: "1 saved on this phone" })).toBeVisible();
  await expectAccessible(hand);
  await kept.getByRole("button", { name: "Undo" }).click();
  await expect(wedges).toBeVisible();
  await expect(hand.getByRole("button", { name: /saved on this phone/ })).toHaveCount(0);

  await wedges.getByRole("button", { name: "At the column" }).click();
  await hand.reload();
  await expect(hand.getByText("No reception.")).toBeVisible();
  await expect(kept).toContainText("saved on this phone");
  await expect(wedges).toHaveCount(0);
  await hand.context().setOffline(false);
  const movement = hand.getByRole("listitem").filter({ hasText: `${pieces} × Wedge` }).filter({ hasText: "B/1" }).filter({ has: hand.getByRole("button", { name: "Take back" }) });
  await expect(movement).toHaveCount(1);
  await expect(wedges.or(kept)).toHaveCount(0);
  expect(taken).toEqual([200]);
  const office = await as("office", browser, heard);
  await office.goto(`${project}/gear/movements`);
  const seen = office.getByRole("listitem").filter({ hasText: "Gathered" }).filter({ hasText: `${pieces} × Wedge` }).filter({ hasText: "B/1" });
  await expect(seen).toHaveCount(1);
  await expect(seen).not.toContainText("taken back");

  await hand.context().setOffline(true);
  await movement.getByRole("button", { name: "Take back" }).click();
  await hand.getByLabel("Why").fill("Another column");
  await hand.getByRole("button", { name: "Take it back" }).click();
  await expect(hand.getByText("taken back, saved on this phone")).toBeVisible();
  await hand.context().setOffline(false);
  await expect(wedges).toBeVisible();
  await office.reload();
  await expect(seen).toContainText("taken back");
});

test("gathered without reception while somebody else took one of it: the reason is told, the other lines are taken one by one, and that one stays until it is dismissed", async ({ browser, heard }) => {
  const hand = await as("leading hand", browser, heard, PHONE);
  const project = await openProject(hand);
  await hand.goto(`${project}/gear/gather`);
  await hand.getByText(/^C\/1 C4/).last().click();
  await hand.getByRole("button", { name: "Make the list for 1 column" }).click();
  // Its clamps and wedges lie at one place.
  const place = (page: Page) => page.getByRole("region", { name: /^Take from: / }).filter({ hasText: /All \d+ lines:/ });
  const lines = (page: Page) => page.getByRole("region", { name: /^Take from: / }).getByRole("group", { name: /^\d+ × / });
  await expect(lines(hand)).toHaveCount(2);
  const name = (await lines(hand).first().getAttribute("aria-label")) ?? "";
  await hand.context().setOffline(true);
  await place(hand).getByText(/^All \d+ lines:$/).locator("..").getByRole("button", { name: "At the column" }).click();
  await expect(hand.getByRole("button", { name: "1 saved on this phone" })).toBeVisible();

  const owner = await as("owner", browser, heard);
  await owner.goto(new URL(hand.url()).pathname + new URL(hand.url()).search);
  await lines(owner).first().getByRole("button", { name: "At the column" }).click();
  const gathered = owner.getByRole("listitem").filter({ hasText: "C/1" }).filter({ has: owner.getByRole("button", { name: "Take back" }) });
  await expect(gathered).toHaveCount(1);

  await hand.context().setOffline(false);
  const refused = hand.getByRole("listitem").filter({ hasText: "not taken" });
  await expect(refused).toContainText(/ for C\/1 was gathered by Maren/);
  await expect(hand.getByRole("button", { name: "1 not taken" })).toBeVisible();
  await expectAccessible(hand);
  await refused.getByRole("button", { name: "Take its lines one by one" }).click();
  await expect(refused).toContainText(`${name}: `);
  await expect(refused).toHaveCount(1);
  await expect(lines(hand)).toHaveCount(0);
  await refused.getByRole("button", { name: "Dismiss" }).click();
  await expect(hand.getByText("not taken")).toHaveCount(0);

  await owner.reload();
  const all = await gathered.count();
  expect(all).toBeGreaterThanOrEqual(2);
  for (let left = all; left > 0; left -= 1) {
    await gathered.first().getByRole("button", { name: "Take back" }).click();
    await owner.getByLabel("Why").fill("Only tried out");
    await owner.getByRole("button", { name: "Take it back" }).click();
    await expect(gathered).toHaveCount(left - 1);
  }
  await expect(lines(owner)).toHaveCount(2);
});
