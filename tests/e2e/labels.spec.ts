import { expect } from "@playwright/test";
import { as, listen, openProject, PEOPLE, PHONE, test } from "./site.ts";

const NOBODYS = "01a00000-0000-7000-8000-000000000000";

test("a scanned label asks for the sign-in and then opens the column it hangs on", async ({ browser, heard }) => {
  const hand = await as("leading hand", browser, heard);
  const project = await openProject(hand);
  const column = (await hand.getByRole("link", { name: /^Open/ }).first().getAttribute("href")) ?? "";
  const [projectId, columnId] = [project.split("/").pop(), new URL(column, "http://own.invalid").pathname.split("/").pop()];
  const label = `/label/column/${projectId}/${columnId}`;

  const phone = await (await browser.newContext(PHONE)).newPage();
  listen(phone, heard);
  await phone.goto(label);
  await expect(phone).toHaveURL(/sign-in/);
  await phone.getByLabel("E-mail").fill(PEOPLE["leading hand"]);
  await phone.getByLabel("Password").fill("string-line-and-wedge");
  await phone.getByRole("button", { name: "Sign in" }).click();
  await expect(phone).toHaveURL(new RegExp(`${project}/columns/${columnId}`));

  for (const kind of ["column", "panel", "set", "bucket"]) {
    await phone.goto(`/label/${kind}/${projectId}/${NOBODYS}`);
    await expect(phone.getByRole("heading", { level: 1 })).toContainText(/nothing here/i);
  }
});

test("the sign-in leads back to no other host", async ({ browser, heard }) => {
  const guest = await (await browser.newContext()).newPage();
  listen(guest, heard);
  await guest.goto("/sign-in?next=//elsewhere.example/label");
  await guest.getByLabel("E-mail").fill(PEOPLE.office);
  await guest.getByLabel("Password").fill("string-line-and-wedge");
  await guest.getByRole("button", { name: "Sign in" }).click();
  await expect(guest.getByRole("heading", { name: "Projects", level: 1 })).toBeVisible();
  expect(new URL(guest.url()).hostname).not.toBe("elsewhere.example");
});

test("labels of a level stand three across on paper", async ({ browser, heard }) => {
  const office = await as("office", browser, heard);
  const project = await openProject(office);
  await office.goto(`${project}/gear/labels`);
  await office.getByRole("navigation", { name: "Labels for" }).getByRole("link", { name: "Columns" }).click();
  const labels = office.getByRole("img", { name: /^Code of/ });
  await expect(labels.first()).toBeVisible();
  await office.emulateMedia({ media: "print" });
  const tops = await labels.evaluateAll((all) => all.slice(0, 4).map((label) => Math.round(label.getBoundingClientRect().top)));
  expect(new Set(tops.slice(0, 3)).size).toBe(1);
  expect(tops[3]).toBeGreaterThan(tops[0] ?? 0);
});
