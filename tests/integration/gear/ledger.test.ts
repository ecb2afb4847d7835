import { beforeAll, describe, expect, it } from "vitest";
import { moveGear, reverseMovement } from "#lib/server/gear/move-gear.ts";
import { openStock } from "#lib/server/gear/stock.ts";
import { aCompany, type Company } from "#tests/support/builders/a-company.ts";
import { aProject } from "#tests/support/builders/a-project.ts";
import { anotherRack, aStock, NOON } from "#tests/support/builders/a-stock.ts";
import { refusal, valueOf } from "#tests/support/builders/value-of.ts";
import { ownDatabase } from "#tests/support/own-database.ts";
import { ask, withOwner } from "#tests/support/raw-sql.ts";

const database = ownDatabase();
let company: Company;
beforeAll(async () => void (company = await aCompany("Sedge Boxing")));

let count = 0;
async function aYard(pieces: Readonly<Record<string, number>> = { Wedge: 40 }) {
  const { projectId } = await aProject(company.owner, { name: `Site ${(count += 1)}` });
  const stock = await aStock(company.owner, projectId, pieces);
  const other = await anotherRack(company.owner, projectId, "Far rack");
  const [rack, wedge] = [stock.place("rack"), stock.item("Wedge")];
  const move = (fromId: string, toId: string, quantity: number) => moveGear(company.leadingHand, { projectId, fromId, toId, happenedAt: NOON, lines: [{ itemId: wedge, quantity }] });
  return { projectId, stock, other, rack, wedge, move };
}
const balanceAt = async (itemId: string, placeId: string): Promise<number> =>
  (await ask<{ quantity: number }>(database.url, "select quantity from gear_balance where item_id = $1 and place_id = $2", [itemId, placeId]))[0]?.quantity ?? 0;

/** Balances that differ from the sum of their lines, and items whose lines do not sum to zero. */
const astray = async () => [
  ...(await ask(database.url, `select item_id, place_id from (select item_id, place_id, quantity from gear_balance union all select item_id, place_id, -quantity from gear_line) b
    group by 1, 2 having sum(quantity) <> 0`)),
  ...(await ask(database.url, "select item_id from gear_line group by movement_id, item_id having sum(quantity) <> 0")),
];

describe("the ledger", () => {
  it("keeps what is where, and takes a movement back once, with a reason", async () => {
    const { projectId, rack, other, wedge, move } = await aYard();
    const [movementId = ""] = valueOf(await move(rack, other, 15));
    expect([await balanceAt(wedge, rack), await balanceAt(wedge, other)]).toEqual([25, 15]);
    expect(refusal(await reverseMovement(company.leadingHand, { projectId, movementId, reason: " " }))).toBe("invalid");
    const [reversalId = ""] = valueOf(await reverseMovement(company.leadingHand, { projectId, movementId, reason: "Went the other way" }));
    expect([await balanceAt(wedge, rack), await balanceAt(wedge, other)]).toEqual([40, 0]);
    expect(refusal(await reverseMovement(company.owner, { projectId, movementId, reason: "Again" }))).toBe("movement-reversed-already");
    expect(refusal(await reverseMovement(company.owner, { projectId, movementId: reversalId, reason: "Back" }))).toBe("movement-is-reversal");
    expect(await astray()).toEqual([]);
  });

  it("refuses what is not there, negative and broken counts, and places of another project", async () => {
    const [here, elsewhere] = [await aYard(), await aYard()];
    expect(refusal(await here.move(here.rack, here.other, 41))).toBe("gear-not-there");
    expect(refusal(await here.move(here.rack, here.other, -3))).toBe("invalid");
    expect(refusal(await here.move(here.rack, here.other, 2.5))).toBe("invalid");
    expect(refusal(await here.move(here.rack, here.rack, 2))).toBe("invalid");
    expect(refusal(await here.move(here.rack, elsewhere.rack, 2))).toBe("not-found");
    expect(refusal(await here.move(here.rack, here.stock.place("lost"), 2))).toBe("place-not-for-moving");
    expect(await balanceAt(here.wedge, here.rack)).toBe(40);
  });

  it("does not take back what has gone on from there", async () => {
    const { projectId, rack, other, move, stock } = await aYard();
    const [movementId = ""] = valueOf(await move(rack, other, 15));
    valueOf(await move(other, stock.place("cleaning bay"), 1));
    expect(refusal(await reverseMovement(company.owner, { projectId, movementId, reason: "Wrong rack" }))).toBe("gear-not-there");
  });

  it("gives the last pieces to one of two who take them at once", async () => {
    const { rack, other, wedge, move, stock } = await aYard({ Wedge: 10 });
    for (let round = 0; round < 5; round += 1) {
      const answers = await Promise.all([move(rack, other, 7), move(rack, stock.place("cleaning bay"), 7)]);
      expect(answers.map(refusal).sort()).toEqual([null, "gear-not-there"].sort());
      const [taken] = await Promise.all([answers[0]?.ok === true ? move(other, rack, 7) : move(stock.place("cleaning bay"), rack, 7)]);
      valueOf(taken);
    }
    expect(await balanceAt(wedge, rack)).toBe(10);
    expect(await astray()).toEqual([]);
  });

  it("opens with bought gear only at a place where it can lie", async () => {
    const { projectId, stock, wedge } = await aYard();
    const open = (placeId: string) => openStock(company.office, { projectId, happenedAt: NOON, placeId, lines: [{ itemId: wedge, quantity: 1 }] });
    expect(refusal(await open(stock.place("bought")))).toBe("not-found");
    expect(refusal(await open(stock.place("yard")))).toBe(null);
  });
});

describe("the database itself", () => {
  /** A movement written past every rule of the app, as the owner; the code of what refuses it at commit, or at once. */
  async function written(lines: readonly (readonly [item: string, place: string, quantity: number])[], movement: { kind?: string; reverses?: string } = {}): Promise<string | null> {
    return withOwner(database.url, async (client) => {
      await client.query("begin");
      try {
        const { rows: [row] } = await client.query<{ id: string }>(`insert into gear_movement (company_id, id, kind, happened_at, arrived_at, by_person_id, reason, reverses_id)
          values ($1, gen_random_uuid(), $2, now(), now(), $3, 'x', $4) returning id::text`, [company.companyId, movement.kind ?? "moved", company.owner.personId, movement.reverses ?? null]);
        for (const [item, place, quantity] of lines)
          await client.query("insert into gear_line values ($1, $2, $3, $4, $5)", [company.companyId, row?.id, item, place, quantity]);
        await client.query("commit");
        return null;
      } catch (error) {
        await client.query("rollback");
        return (error as { constraint?: string }).constraint ?? String(error);
      }
    });
  }

  it("refuses lines that do not sum to zero, that move nothing, or that take what is not there", async () => {
    const { rack, other, wedge, stock } = await aYard();
    expect(await written([[wedge, other, 5]])).toBe("gear_line_zero_sum");
    expect(await written([])).toBe("gear_movement_lines");
    expect(await written([[wedge, rack, 0]])).toBe("gear_line_moves");
    expect(await written([[wedge, other, -5], [wedge, rack, 5]])).toBe("gear_balance_there");
    expect(await written([[wedge, rack, -1], [wedge, stock.place("bought"), 100_000]])).toBe("gear_balance_there");
    expect(await written([[wedge, other, 5], [wedge, rack, -5]])).toBe(null);
  });

  it("refuses a reversal that does not mirror, and a second one", async () => {
    const { rack, other, wedge, move } = await aYard();
    const [reverses = ""] = valueOf(await move(rack, other, 15));
    expect(await written([[wedge, rack, 14], [wedge, other, -14]], { kind: "reversed", reverses })).toBe("gear_movement_mirror");
    expect(await written([[wedge, other, -15], [wedge, rack, 15]], { kind: "reversed", reverses })).toBe(null);
    expect(await written([[wedge, other, -15], [wedge, rack, 15]], { kind: "reversed", reverses })).toBe("gear_movement_reversed_once");
  });

  it("lets one of two open transactions put the same panel somewhere, and refuses the other", async () => {
    const { rack, other, stock } = await aYard();
    const [panel] = await ask<{ id: string }>(database.url, "insert into gear_item (company_id, id, family, name) values ($1, gen_random_uuid(), 'panel', 'P-1') returning id::text", [company.companyId]);
    const id = panel?.id ?? "";
    const both = await Promise.all([rack, other].map((place) => written([[id, place, 1], [id, stock.place("bought"), -1]], { kind: "made" })));
    expect(both.filter((answer) => answer === null)).toHaveLength(1);
    expect(both.find((answer) => answer !== null)).toMatch(/^gear_balance_/);
    expect(await ask(database.url, "select 1 from gear_balance where item_id = $1 and quantity = 1", [id])).toHaveLength(1);
    expect(await astray()).toEqual([]);
  });
});
