import { expect, it } from "vitest";
import { foundCompany, mayFoundCompany } from "#lib/server/people/found-company.ts";
import { PASSWORD } from "#tests/support/builders/a-company.ts";
import { refusal, valueOf } from "#tests/support/builders/value-of.ts";
import { ownDatabase } from "#tests/support/own-database.ts";

ownDatabase({ ALLOW_NEW_COMPANIES: "false" });

const found = (name: string) => foundCompany({ companyName: name, name, email: `${name}@founding.example`, password: PASSWORD });

it("a company may be founded while there is none, and then no more", async () => {
  expect(valueOf(await mayFoundCompany({}))).toBe(true);
  expect((await found("first")).ok).toBe(true);
  expect(valueOf(await mayFoundCompany({}))).toBe(false);
  expect(refusal(await found("second"))).toBe("founding-closed");
});
