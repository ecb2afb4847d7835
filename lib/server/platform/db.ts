import "server-only";
import { PrismaPg } from "@prisma/adapter-pg";
import { Prisma, PrismaClient } from "#prisma/generated/client.ts";
import { env } from "./env.ts";
import { oneAtATime } from "./one-at-a-time.ts";

export type Tx = Prisma.TransactionClient;

/** The role every query of the app runs under: owns nothing, cannot bypass row-level security. */
export const APP_ROLE = "shutterwright_app";

const kept = globalThis as typeof globalThis & { shutterwrightDb?: PrismaClient };

function open(): PrismaClient {
  const adapter = new PrismaPg({
    connectionString: env().DATABASE_URL,
    options: `-c role=${APP_ROLE}`,
    max: env().DATABASE_CONNECTIONS,
  });
  return new PrismaClient({ adapter: oneAtATime(adapter) });
}

const client = (): PrismaClient => (kept.shutterwrightDb ??= open());

/** One transaction; everything in it is kept together or not at all. */
export const transaction = <T>(work: (tx: Tx) => Promise<T>): Promise<T> =>
  client().$transaction(work, { maxWait: 10_000, timeout: 60_000 });

export const answers = async (): Promise<boolean> => {
  await client().$queryRaw`select 1`;
  return true;
};

export async function closeDb(): Promise<void> {
  await kept.shutterwrightDb?.$disconnect();
  delete kept.shutterwrightDb;
}

/** PostgreSQL's code of a failed query (SQLSTATE), or the ORM's own for a clash; null for anything else. */
export function clashOf(error: unknown): "duplicate" | "still-used" | "lost-race" | "broken-check" | null {
  if (!(error instanceof Prisma.PrismaClientKnownRequestError)) return null;
  const cause = (error.meta as { driverAdapterError?: { cause?: { originalCode?: string } } } | undefined)
    ?.driverAdapterError?.cause?.originalCode;
  if (error.code === "P2002" || cause === "23505") return "duplicate";
  if (error.code === "P2003" || cause === "23503" || cause === "23001") return "still-used";
  if (cause === "23514") return "broken-check";
  if (error.code === "P2034" || cause === "40001" || cause === "40P01") return "lost-race";
  return null;
}
