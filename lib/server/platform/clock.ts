import "server-only";

/** The server's present instant, ISO 8601 in UTC. */
export const now = (): string => new Date().toISOString();
