import { expect } from "@playwright/test";
import { sheathingExample } from "#lib/contracts/workings/sheathing.ts";
import { as, expectAccessible, PHONE, test } from "./site.ts";

const SHEATHING = "/api/v1/workings/sheathing";

test("a token lets a program ask the calculators until it is revoked; a session does not", async ({ browser, request, heard }) => {
  const office = await as("office", browser, heard, PHONE);
  await office.goto("/account");
  const name = `Pressure spreadsheet ${Date.now()}`;
  await office.getByLabel("Name of the token").fill(name);
  await office.getByRole("button", { name: "Make a token" }).click();
  const token = await office.getByLabel("The token", { exact: true }).inputValue();
  await expectAccessible(office);

  const asked = await request.post(SHEATHING, { data: sheathingExample, headers: { authorization: `Bearer ${token}` } });
  expect(asked.status()).toBe(200);
  expect(await asked.json()).toHaveProperty("allowed_pressure_kPa");
  const bySession = await office.request.post(SHEATHING, { data: sheathingExample });
  expect([bySession.status(), bySession.headers()["content-type"]]).toEqual([401, "application/problem+json"]);

  await office.reload();
  await expect(office.getByLabel("The token", { exact: true })).toHaveCount(0);
  const row = office.getByRole("listitem").filter({ hasText: name });
  await expect(row).not.toContainText("not yet");
  await row.getByRole("button", { name: "Revoke" }).click();
  await office.getByRole("alertdialog").getByRole("button", { name: "Revoke" }).click();
  await expect(row).toHaveCount(0);
  const after = await request.post(SHEATHING, { data: sheathingExample, headers: { authorization: `Bearer ${token}` } });
  expect([after.status(), after.headers()["www-authenticate"]]).toEqual([401, 'Bearer realm="Shutterwright", error="invalid_token"']);
});
