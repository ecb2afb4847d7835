import "server-only";
import type { SqlDriverAdapterFactory, SqlQuery, Transaction } from "@prisma/driver-adapter-utils";

/**
 * The queries of a transaction share one connection, and the ORM asks for several included tables at once; the driver
 * wants each asked after the one before has been answered. Each still answers for itself: a failed one holds none up.
 */
function inLine(transaction: Transaction): Transaction {
  let last: Promise<unknown> = Promise.resolve();
  const next = <T>(ask: (query: SqlQuery) => Promise<T>) => (query: SqlQuery): Promise<T> => {
    const answer = last.then(() => ask(query), () => ask(query));
    last = answer;
    return answer;
  };
  const [queryRaw, executeRaw] = [transaction.queryRaw.bind(transaction), transaction.executeRaw.bind(transaction)];
  return Object.assign(transaction, { queryRaw: next(queryRaw), executeRaw: next(executeRaw) });
}

/** The same adapter, whose transactions ask one query at a time. */
export function oneAtATime(factory: SqlDriverAdapterFactory): SqlDriverAdapterFactory {
  return {
    provider: factory.provider, adapterName: factory.adapterName,
    connect: async () => {
      const adapter = await factory.connect();
      const start = adapter.startTransaction.bind(adapter);
      return Object.assign(adapter, { startTransaction: async (...level: Parameters<typeof start>) => inLine(await start(...level)) });
    },
  };
}
