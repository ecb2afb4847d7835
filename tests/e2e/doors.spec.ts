import { expect } from "@playwright/test";
import { as, listen, openProject, PEOPLE, signInOn, test } from "./site.ts";

test("a wrong password and an unknown address get the same answer", async ({ page, heard }) => {
  listen(page, heard);
  const answers: string[] = [];
  for (const email of [PEOPLE.office, "nobody@quillback.example"]) {
    await signInOn(page, email, "not-the-password");
    await expect(page.getByText("E-mail and password do not match.")).toBeVisible();
    answers.push(await page.getByRole("main").innerText());
  }
  expect(answers[0]).toBe(answers[1]);
});

test("who is not signed in is sent to the door and comes back to where they wanted", async ({ browser, page, heard }) => {
  listen(page, heard);
  const signedIn = await as("office", browser, heard);
  const project = await openProject(signedIn);
  await page.goto(`${project}/columns`);
  await expect(page).toHaveURL(/sign-in/);
  await page.getByLabel("E-mail").fill(PEOPLE.office);
  await page.getByLabel("Password").fill("string-line-and-wedge");
  await page.getByRole("button", { name: "Sign in" }).click();
  await expect(page).toHaveURL(new RegExp(`${project}/columns`));
});

test("a link brings a new person in, and closing the sign-in puts them out at their next step", async ({ browser, heard }) => {
  const owner = await as("owner", browser, heard);
  await owner.goto("/people");
  const email = `hand-${Date.now()}@quillback.example`;
  await owner.getByLabel("E-mail").fill(email);
  await owner.getByRole("button", { name: "Make the invitation" }).click();
  const link = await owner.getByLabel("The link").inputValue();

  const guest = await (await browser.newContext()).newPage();
  listen(guest, heard);
  await guest.goto(new URL(link).pathname);
  await guest.getByLabel("Your name").fill("Oren Pike");
  await guest.getByLabel("Choose a password").fill("nine-clamps-high");
  await guest.getByRole("button", { name: "Join" }).click();
  await expect(guest.getByRole("heading", { name: "Projects", level: 1 })).toBeVisible();
  await expect(guest.getByRole("link", { name: "New project" })).toHaveCount(0);

  const again = await (await browser.newContext()).newPage();
  await again.goto(new URL(link).pathname);
  await expect(again.getByRole("heading", { name: "This invitation is not open" })).toBeVisible();

  await owner.reload();
  await owner.getByRole("row", { name: new RegExp(email) }).getByRole("button", { name: /Change/ }).click();
  await owner.getByRole("button", { name: "Close the sign-in" }).click();
  await owner.getByRole("alertdialog").getByRole("button", { name: "Close the sign-in" }).click();
  await expect(owner.getByRole("row", { name: new RegExp(email) })).toContainText("closed");
  await guest.reload();
  await expect(guest).toHaveURL(/sign-in/);
});

test("an address of nobody's is not found", async ({ browser, heard }) => {
  const owner = await as("owner", browser, heard);
  await owner.goto("/projects/01a00000-0000-7000-8000-000000000000/today");
  await expect(owner.getByRole("heading", { level: 1 })).toContainText(/nothing here/i);
});
