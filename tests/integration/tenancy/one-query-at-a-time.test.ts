import { describe, expect, it } from "vitest";
import { PrismaPg } from "@prisma/adapter-pg";
import { oneAtATime } from "#lib/server/platform/one-at-a-time.ts";
import { ownDatabase } from "#tests/support/own-database.ts";

const database = ownDatabase();
const ask = (sql: string) => ({ sql, args: [], argTypes: [] });

describe("the queries of a transaction", () => {
  it("are asked one after another, though wanted at once, and a failed one does not swallow the next", async () => {
    const warnings: string[] = [];
    const hear = (warning: Error) => void warnings.push(warning.message);
    process.on("warning", hear);
    const adapter = await oneAtATime(new PrismaPg({ connectionString: database.url })).connect();
    const transaction = await adapter.startTransaction();
    const answers = await Promise.all(["1", "2", "3"].map((figure) => transaction.queryRaw(ask(`select ${figure} figure`))));
    expect(answers.map(({ rows }) => rows)).toEqual([[[1]], [[2]], [[3]]]);
    const [failed, after] = await Promise.allSettled([transaction.queryRaw(ask("select 1 / 0")), transaction.queryRaw(ask("select 1"))]);
    // PostgreSQL, Appendix A: 22012 division by zero; 25P02 in a failed transaction.
    expect(failed).toMatchObject({ status: "rejected", reason: { cause: { originalCode: "22012" } } });
    expect(after).toMatchObject({ status: "rejected", reason: { cause: { originalCode: "25P02" } } });
    await transaction.rollback();
    await adapter.dispose();
    await new Promise((resolve) => setImmediate(resolve));
    process.off("warning", hear);
    expect(warnings).toEqual([]);
  });
});
