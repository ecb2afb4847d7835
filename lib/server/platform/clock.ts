import "server-only";
import { AsyncLocalStorage } from "node:async_hooks";

const setClock = new AsyncLocalStorage<string>();

/** The server's present instant, ISO 8601 in UTC. */
export const now = (): string => setClock.getStore() ?? new Date().toISOString();

/** Runs work as if it were another moment: for the demo's past and for tests with a fixed clock. */
export const atMoment = <T>(instant: string, work: () => Promise<T>): Promise<T> => setClock.run(instant, work);
