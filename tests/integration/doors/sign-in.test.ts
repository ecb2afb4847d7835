import { beforeAll, beforeEach, describe, expect, it } from "vitest";
import { setPersonActive } from "#lib/server/people/manage-people.ts";
import { signIn } from "#lib/server/people/sign-in.ts";
import { TRIES_MINUTES } from "#lib/server/people/tries.ts";
import { aCompany, aPersonOf, PASSWORD, type Company } from "#tests/support/builders/a-company.ts";
import { refusal, valueOf } from "#tests/support/builders/value-of.ts";
import { ownDatabase } from "#tests/support/own-database.ts";
import { ask } from "#tests/support/raw-sql.ts";

const database = ownDatabase();
const forget = (): Promise<unknown> => ask(database.url, "delete from sign_in_attempt");
const WRONG = "not the password at all";
const MOST = 8;
const GONE = "gone@teal-boxing.example";

let company: Company;
beforeAll(async () => {
  company = await aCompany("Teal Boxing");
  const gone = await aPersonOf(company.owner, { email: GONE, role: "office" });
  valueOf(await setPersonActive(company.owner, { personId: gone.personId, isActive: false }));
});
beforeEach(forget);

const enter = (email: string, password: string, address = "hut") => signIn({ email, password, address });

describe("signing in", () => {
  it("names the person and the session, whatever the case the address is typed in", async () => {
    expect(await enter(company.emailOf("owner"), PASSWORD)).toEqual({ ok: true, value: company.owner });
    expect(await enter(`  ${company.emailOf("owner").toUpperCase()} `, PASSWORD)).toEqual({ ok: true, value: company.owner });
  });

  it("answers an unknown address, a wrong password and somebody deactivated alike, to the letter", async () => {
    const answers = [await enter("nobody@teal-boxing.example", PASSWORD), await enter(company.emailOf("office"), WRONG), await enter(GONE, PASSWORD), await enter(GONE, WRONG)];
    expect(new Set(answers.map((answer) => JSON.stringify(answer))).size).toBe(1);
    expect(answers.map(refusal)).toEqual(Array.from({ length: 4 }, () => "wrong-sign-in"));
  });

  it("takes about as long to refuse one as the other", async () => {
    const tries = { unknown: "nobody@teal-boxing.example", known: company.emailOf("office"), gone: GONE };
    const took: Record<string, number[]> = { unknown: [], known: [], gone: [] };
    await enter(tries.unknown, WRONG);
    for (let round = 0; round < 15; round += 1) {
      for (const [who, email] of Object.entries(tries)) {
        await forget();
        const started = performance.now();
        await enter(email, WRONG);
        took[who]?.push(performance.now() - started);
      }
    }
    // The quickest of many is what the work costs; a skipped hash would make one of them several times quicker.
    const quickest = Object.values(took).map((times) => Math.min(...times));
    expect(Math.max(...quickest) / Math.min(...quickest)).toBeLessThan(2);
  });
});

describe("too many failures", () => {
  it(`close the door to one address after ${MOST}, even with the right password, and to nobody else`, async () => {
    for (let count = 0; count < MOST; count += 1) expect(refusal(await enter(company.emailOf("office"), WRONG))).toBe("wrong-sign-in");
    expect(refusal(await enter(company.emailOf("office"), PASSWORD))).toBe("too-many-sign-ins");
    expect(refusal(await enter(company.emailOf("office").toUpperCase(), PASSWORD))).toBe("too-many-sign-ins");
    expect((await enter(company.emailOf("owner"), PASSWORD)).ok).toBe(true);
  });

  it("are counted one by one, also when many guesses come at once", async () => {
    const answers = await Promise.all(Array.from({ length: 3 * MOST }, () => enter(company.emailOf("office"), WRONG)));
    expect(answers.map(refusal).filter((word) => word === "wrong-sign-in")).toHaveLength(MOST);
  });

  it("are counted for an address nobody has, so that the limit tells nothing either", async () => {
    for (let count = 0; count < MOST; count += 1) await enter("nobody@teal-boxing.example", WRONG);
    expect(refusal(await enter("nobody@teal-boxing.example", WRONG))).toBe("too-many-sign-ins");
  });

  it(`are forgiven after ${TRIES_MINUTES} minutes`, async () => {
    for (let count = 0; count < MOST; count += 1) await enter(company.emailOf("office"), WRONG);
    await ask(database.url, `update sign_in_attempt set at = at - interval '${TRIES_MINUTES} minutes 1 second'`);
    expect((await enter(company.emailOf("office"), PASSWORD)).ok).toBe(true);
  });

  it("are forgotten once the person is in", async () => {
    for (let count = 0; count < MOST - 1; count += 1) await enter(company.emailOf("office"), WRONG);
    expect((await enter(company.emailOf("office"), PASSWORD)).ok).toBe(true);
    for (let count = 0; count < MOST - 1; count += 1) await enter(company.emailOf("office"), WRONG);
    expect((await enter(company.emailOf("office"), PASSWORD)).ok).toBe(true);
  });

  it("are counted by where they come from too, whomever they try", async () => {
    for (let count = 0; count < 60; count += 1) await enter(`guess${count}@teal-boxing.example`, WRONG, "one machine");
    expect(refusal(await enter(company.emailOf("owner"), PASSWORD, "one machine"))).toBe("too-many-sign-ins");
    expect((await enter(company.emailOf("owner"), PASSWORD, "another")).ok).toBe(true);
  });
});
