import pg from "pg";
import { workerName } from "./worker-address.ts";

// A worker listens nowhere: it is well when its connection to the database is there.
const client = new pg.Client({ connectionString: process.env["DATABASE_URL"], connectionTimeoutMillis: 5_000 });
await client.connect();
const { rowCount } = await client.query("select 1 from pg_stat_activity where application_name = $1", [workerName()]);
await client.end();
process.exit(rowCount ? 0 : 1);
