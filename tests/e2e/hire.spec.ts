import { expect } from "@playwright/test";
import { as, openProject, PHONE, test } from "./site.ts";

/** One transparent pixel. */
const PICTURE = Buffer.from("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==", "base64");

test("the leading hand counts a return at the gate; more than is on hire is refused, the photo goes with it", async ({ browser, heard }) => {
  const hand = await as("leading hand", browser, heard, PHONE);
  const project = await openProject(hand);
  await hand.goto(`${project}/hire/dockets/new?kind=return`);
  await hand.getByRole("link", { name: "Kettlewater Props" }).click();
  await expect(hand.getByText("Kettlewater Props", { exact: true }).last()).toBeVisible();
  const props = hand.getByRole("group", { name: "Prop 2.1 to 3.6 m" });
  await expect(props).toContainText("40 expected");
  await hand.getByLabel("Return docket number").fill(`KW-R${Date.now()}`);
  await props.getByLabel("Counted").fill("41");
  await hand.setInputFiles("input[type=file]", { name: "bins.png", mimeType: "image/png", buffer: PICTURE });
  await hand.getByRole("button", { name: "Send it back" }).click();
  await expect(hand.getByRole("alert").filter({ hasText: "41 would leave, but only 40" })).toBeVisible();

  await props.getByLabel("Counted").fill("10");
  await hand.getByRole("button", { name: "Send it back" }).click();
  await expect(hand.getByRole("heading", { name: /^Return KW-R/, level: 1 })).toBeVisible();
  await expect(hand.getByRole("img", { name: /^Taken/ })).toHaveCount(1);
  await expect(hand.getByRole("button", { name: /^Reverse/ })).toHaveCount(0);
  await hand.goto(`${project}/hire`);
  await expect(hand.getByRole("region", { name: "Kettlewater Props", exact: true }).getByRole("row", { name: /^Prop/ }).first()).toBeVisible();
});

test("the office finds both mistakes on the supplier's invoice and has the letter", async ({ browser, heard }) => {
  const office = await as("office", browser, heard);
  const project = await openProject(office);
  await office.goto(`${project}/hire/invoices`);
  await office.getByRole("link", { name: "MG-INV 5521" }).click();
  await expect(office.getByText("Probably a return left out", { exact: false })).toBeVisible();
  await expect(office.getByText("Probably another rate: 0.175 asked, 0.14 agreed.")).toBeVisible();
  await office.getByRole("button", { name: "Open a query" }).first().click();
  await office.getByRole("button", { name: "Save the query" }).click();
  const letter = office.getByRole("link", { name: "Query letter PDF" });
  await expect(letter).toBeVisible();
  const answer = await office.request.get((await letter.getAttribute("href")) ?? "");
  expect(answer.headers()["content-type"]).toBe("application/pdf");
  expect((await answer.body()).subarray(0, 5).toString()).toBe("%PDF-");
});

test("days are set for all that lack them, and taken back", async ({ browser, heard }) => {
  const hand = await as("leading hand", browser, heard, PHONE);
  const project = await openProject(hand);
  await hand.goto(`${project}/pours`);
  const lacking = hand.getByRole("button", { name: /^Without a day/ });
  const before = await lacking.innerText();
  await lacking.click();
  await hand.getByLabel("Pour on").fill("2031-03-05");
  await hand.getByLabel("Name of the pour").fill("Pour 10");
  await hand.getByRole("button", { name: /^Set for/ }).click();
  await expect(hand.getByRole("button", { name: /^Pour 10/ })).toBeVisible();
  await hand.getByRole("button", { name: /^Undo/ }).click();
  await expect(hand.getByRole("button", { name: /^Pour 10/ })).toHaveCount(0);
  await expect(lacking).toHaveText(before);
});
