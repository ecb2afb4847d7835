import { existsSync } from "node:fs";
import { expect, type Page } from "@playwright/test";
import { as, test } from "./site.ts";

const SAMPLE = "../shared/samples/schedules/clean-column-list.csv";

/** An invented schedule for when the sample is not there. */
const OWN = [
  "Mark,Grid,Width (mm),Depth (mm),From level,To level,From elevation (m),To elevation (m)",
  "K1,A/1,300,600,Ground,First,0.000,3.900",
  "K1,A/1,300,600,First,Roof,3.900,7.300",
  "K2,B/1,450,450,Ground,First,0.000,3.900",
].join("\n");

async function newProject(page: Page): Promise<string> {
  await page.getByRole("link", { name: "New project" }).click();
  await page.getByRole("textbox", { name: "Name", exact: true }).fill(`Ferry Steps ${Date.now()}`);
  await page.getByRole("textbox", { name: "Site", exact: true }).fill("3 Towpath Row");
  await page.getByRole("combobox", { name: "Currency" }).fill("AUD");
  await page.keyboard.press("Escape");
  await page.getByRole("button", { name: "Start the project" }).click();
  await page.waitForURL(/\/projects\/[0-9a-f-]{36}/);
  return /\/projects\/[0-9a-f-]{36}/.exec(page.url())?.[0] ?? "";
}

const name = existsSync(SAMPLE) ? "the sample schedule" : "an own schedule (sample not run: ../shared/samples absent)";
test(`the owner brings ${name} into a new project and sees what to cut`, async ({ browser, heard }) => {
  const owner = await as("owner", browser, heard);
  const project = await newProject(owner);
  await owner.goto(`${project}/set-up/schedule`);
  const file = existsSync(SAMPLE) ? SAMPLE : { name: "own.csv", mimeType: "text/csv", buffer: Buffer.from(OWN) };
  const lifts = existsSync(SAMPLE) ? 14 : 3;
  await owner.locator("input[type=file]").setInputFiles(file);
  await owner.getByRole("button", { name: new RegExp(`Import ${lifts} columns`) }).first().click();
  await expect(owner.getByText(`${lifts} columns created, 0 changed.`)).toBeVisible();
  await owner.goto(`${project}/columns?view=list`);
  await expect(owner.getByText(/columns? shown/)).toBeVisible();
  await owner.getByRole("link", { name: /^Open A\/1/ }).first().click();
  // Common practice, no source: two faces at the column's size, two at size + 2 × ply; 300 in 18 mm ply is 336.
  const cutting = owner.getByRole("table", { name: /Cutting list/ });
  await expect(cutting.getByRole("cell", { name: "336", exact: true }).first()).toBeVisible();
  await expect(cutting.getByRole("cell", { name: "600", exact: true }).first()).toBeVisible();
  await expect(owner.getByRole("img", { name: /elevation/i }).first()).toBeVisible();
});

test("a file that is no schedule is refused with one line, and nothing is written", async ({ browser, heard }) => {
  const owner = await as("owner", browser, heard);
  const project = await newProject(owner);
  await owner.goto(`${project}/set-up/schedule`);
  await owner.locator("input[type=file]").setInputFiles({ name: "plan.xlsx", mimeType: "application/octet-stream", buffer: Buffer.from([0x89, 0x50, 0x4e, 0x47, 1, 2, 3]) });
  await expect(owner.getByRole("alert").first()).toBeVisible();
  await expect(owner.getByRole("button", { name: /^Import \d/ })).toHaveCount(0);
  await owner.goto(`${project}/columns`);
  await expect(owner.getByText("No column yet")).toBeVisible();
});
