import { expect, type Page } from "@playwright/test";
import { as, CLINIC, expectEachAccessible, openProject, PHONE, test } from "./site.ts";

const CALCULATORS = ["pressure", "sheathing", "backing", "clamp-layout", "strip-time", "plumb"] as const;

async function openWorking(page: Page, name: string): Promise<void> {
  await page.getByRole("navigation", { name: "Workings" }).getByRole("link", { name }).click();
  await expect(page.getByRole("heading", { name, level: 1 })).toBeVisible();
}

/** A search for the fewest clamps may take its second several times over on a busy machine. */
const SEARCHED = { timeout: 30_000 };

const answer = (page: Page) => page.getByRole("region", { name: "Answer" });
const fill = async (page: Page, label: string, value: string) => page.getByRole("textbox", { name: label, exact: true }).fill(value);

for (const [device, options] of [["desk", {}], ["phone", PHONE]] as const) {
  test(`pressure is worked out at a ${device}, stands in the address, and refuses by name`, async ({ browser, heard }) => {
    const hand = await as("leading hand", browser, heard, options);
    const project = await openProject(hand);
    await hand.goto(`${project}/workings`);
    await openWorking(hand, "Concrete pressure");
    await fill(hand, "Form height (mm)", "3200");
    await fill(hand, "Density (kN/m³)", "24");
    await hand.keyboard.press("Enter");
    // Full head: 24 x 3.2 = 76.8 kPa; resultant 76.8 x 3.2 / 2 = 122.88 kN per metre of face.
    await expect(answer(hand)).toContainText("76.8 kPa");
    await expect(answer(hand)).toContainText("122.9 kN/m");
    await expect(hand).toHaveURL(/form\.height_mm=3200/);
    await hand.reload();
    await expect(hand.getByRole("textbox", { name: "Form height (mm)", exact: true })).toHaveValue("3200");
    await expect(answer(hand)).toContainText("76.8 kPa");

    await fill(hand, "Concrete height (mm) (may stay empty)", "3900");
    await hand.getByRole("button", { name: "Work it out" }).click();
    await expect(hand.getByText("No answer: pour height (mm) is outside what the method covers.")).toBeVisible();
    await expect(hand.getByText("over 0 and up to the form height of 3200 mm")).toBeVisible();
    await expect(answer(hand)).toHaveCount(0);
    await hand.goBack();
    await expect(answer(hand)).toContainText("76.8 kPa");
  });

  test(`clamps are found, checked as they stand, and left out one at a time at a ${device}`, async ({ browser, heard }) => {
    const owner = await as("owner", browser, heard, options);
    const project = await openProject(owner);
    await owner.goto(`${project}/workings/clamp-layout`);
    await expect(answer(owner)).toContainText(/clamps hold/);
    await expect(owner.getByText("Props, bracing and wind are not computed here", { exact: false })).toBeVisible();
    await expect(owner.getByText("Uplift is not computed here.", { exact: false })).toBeVisible();

    await owner.getByRole("link", { name: "Show the layout without clamp 1" }).click();
    const without = owner.getByRole("region", { name: /^Without the clamp at/ });
    await expect(without).toContainText(/does not hold|still holds/, SEARCHED);

    await owner.getByText("Check my layout").click();
    await owner.getByRole("button", { name: "Take out clamp 2" }).click();
    await owner.getByRole("button", { name: "Work it out" }).click();
    await expect(owner).toHaveURL(/layout\.kind=measured/, SEARCHED);
    await expect(answer(owner)).toContainText("It does not hold");

    await fill(owner, "Clamp 1 (mm)", "9000");
    await owner.getByRole("button", { name: "Work it out" }).click();
    await expect(owner.getByText(/^No answer: height of clamp \d+ \(mm\)/)).toBeVisible();
  });

  test(`plumb says which way to knock and from where to prop at a ${device}`, async ({ browser, heard }) => {
    const hand = await as("leading hand", browser, heard, options);
    const project = await openProject(hand);
    await hand.goto(`${project}/workings/plumb`);
    await fill(hand, "Form height (mm)", "3200");
    await fill(hand, "Bottom read at (mm)", "0");
    await fill(hand, "Top read at (mm)", "3200");
    const [bottom, top] = [hand.getByRole("textbox", { name: "At the bottom (mm)" }), hand.getByRole("textbox", { name: "At the top (mm)" })];
    // A stands out 6 mm at the head and 0 at the foot, B 0 at both: knock it 6 mm towards C, pushed from A.
    for (const [index, [foot, head]] of ([["0", "6"], ["0", "6"], ["0", "0"]] as const).entries()) {
      await bottom.nth(index).fill(foot);
      await top.nth(index).fill(head);
    }
    await top.nth(2).press("Enter");
    await expect(answer(hand)).toContainText("Knock the head towards C");
    await expect(answer(hand)).toContainText("6.0 mm");
    await expect(answer(hand)).toContainText("prop on side A");
    await expect(answer(hand)).not.toContainText("towards B");
  });
}

test("the workings pass the accessibility rules at a phone and at a desk", async ({ browser, heard }) => {
  const owner = await as("owner", browser, heard, PHONE);
  const project = await openProject(owner, CLINIC);
  await expectEachAccessible(owner, ["", ...CALCULATORS.map((name) => `/${name}`)].map((path) => `${project}/workings${path}`));
});

test("the clamps of a column are checked as they stand, from its own page", async ({ browser, heard }) => {
  const hand = await as("leading hand", browser, heard, PHONE);
  await openProject(hand);
  await hand.getByRole("link", { name: /^Open/ }).first().click();
  await expect(hand).toHaveURL(/\/columns\//);
  const title = (await hand.getByRole("heading", { level: 1 }).innerText()).split("\n")[0] ?? "";
  await hand.getByRole("link", { name: "Check the clamps as they stand" }).click();
  await expect(hand.getByRole("heading", { name: "Clamp layout", level: 1 })).toBeVisible();
  await expect(hand.getByText(/^Column .+\./)).toContainText(title.split(",")[0] ?? title);
  await expect(answer(hand)).toContainText(/clamps hold/, SEARCHED);
  const lowest = hand.getByRole("textbox", { name: "Clamp 1 (mm)", exact: true });
  await lowest.fill(String(Number(await lowest.inputValue()) + 400));
  await lowest.press("Enter");
  await expect(answer(hand)).toContainText("It does not hold", SEARCHED);
});
