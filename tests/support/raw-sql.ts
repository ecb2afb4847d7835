import pg from "pg";

type Row = Record<string, unknown>;

/** One connection as the database's owner, for what no use case offers: looking behind the app, or trying to break in. */
export async function withOwner<T>(databaseUrl: string, work: (client: pg.Client) => Promise<T>): Promise<T> {
  const client = new pg.Client({ connectionString: databaseUrl });
  await client.connect();
  return work(client).finally(() => client.end());
}

export const ask = <R extends Row>(databaseUrl: string, sql: string, values: readonly unknown[] = []): Promise<R[]> =>
  withOwner(databaseUrl, async (client) => (await client.query<R>(sql, [...values])).rows);

/** The code PostgreSQL refuses with, or null when it does not refuse; nothing is kept either way. */
export async function refusalOf(client: pg.Client, sql: string, values: readonly unknown[] = []): Promise<string | null> {
  await client.query("savepoint tried");
  try {
    await client.query(sql, [...values]);
    return null;
  } catch (error) {
    if (error instanceof pg.DatabaseError) return error.code ?? "unknown";
    throw error;
  } finally {
    await client.query("rollback to savepoint tried");
  }
}

/** The same connection under the app's role, seeing one company or none; undone at the end. */
export async function asApp<T>(databaseUrl: string, companyId: string | null, work: (client: pg.Client) => Promise<T>): Promise<T> {
  return withOwner(databaseUrl, async (client) => {
    await client.query("begin");
    await client.query("set local role shutterwright_app");
    if (companyId !== null) await client.query("select set_config('app.company_id', $1, true)", [companyId]);
    return work(client).finally(() => client.query("rollback"));
  });
}
