import { expect } from "@playwright/test";
import { as, openProject, PHONE, test } from "./site.ts";

test("a whole level is ticked at once, and what is skipped is said with the reason", async ({ browser, heard }) => {
  const hand = await as("leading hand", browser, heard);
  const project = await openProject(hand);
  const office = await as("office", browser, heard);
  await office.goto(`${project}/columns?view=levels`);
  await hand.goto(`${project}/columns?view=levels`);
  const grid = hand.getByRole("grid", { name: "Levels and columns" });
  await grid.getByRole("button", { name: "Level 4" }).click();
  await expect(hand.getByText("20 selected")).toBeVisible();
  await hand.getByRole("region", { name: "Record on the selected columns" }).getByRole("button", { name: /^cut/ }).click();
  await expect(office.getByRole("gridcell", { name: /A\/1, Level 4, .*, cut/ })).toBeVisible();

  await hand.goto(`${project}/columns?view=levels`);
  await grid.getByRole("button", { name: "Level 4" }).click();
  await grid.getByRole("button", { name: "Level 3" }).click();
  await expect(hand.getByText("40 selected")).toBeVisible();
  await hand.getByRole("region", { name: "Record on the selected columns" }).getByRole("button", { name: /^cut/ }).click();
  const answer = hand.getByRole("dialog").or(hand.getByRole("alertdialog"));
  await expect(answer).toContainText(/skipped/i);
});

test("the levels are walked with the arrow keys, selected with Space and opened with Enter", async ({ browser, heard }) => {
  const owner = await as("owner", browser, heard);
  const project = await openProject(owner);
  await owner.goto(`${project}/columns?view=levels`);
  const first = owner.getByRole("gridcell", { name: /^A\/1, Level 4/ });
  await first.focus();
  await owner.keyboard.press("ArrowRight");
  await owner.keyboard.press("ArrowDown");
  await expect(owner.getByRole("gridcell", { name: /^A\/2, Level 3/ })).toBeFocused();
  await owner.keyboard.press(" ");
  await expect(owner.getByText("1 selected")).toBeVisible();
  await owner.keyboard.press("Enter");
  await expect(owner.getByRole("heading", { name: "Column A/2", level: 1 })).toBeVisible();
});

test("a filter stands in the address and survives a reload", async ({ browser, heard }) => {
  const office = await as("office", browser, heard, PHONE);
  const project = await openProject(office);
  await office.goto(`${project}/columns?view=list&stage=at:stripped`);
  await expect(office.getByText(/columns? shown/)).toBeVisible();
  const before = await office.getByText(/columns? shown/).innerText();
  await office.reload();
  await expect(office.getByText(before)).toBeVisible();
  await expect(office.getByRole("button", { name: /not started/ })).toHaveCount(0);
});
