import { ClearLine } from "../database/clear-line.ts";
import { isFree } from "../database/free-port.ts";

export type Settings = {
  readonly port: number;
  /** The network address to listen on: this machine only, unless HOST says otherwise. */
  readonly host: string;
  /** Somebody else's PostgreSQL, or null for the built-in one. */
  readonly databaseUrl: string | null;
};

const defaultPort = 3210;

function readPort(text: string | undefined): number {
  if (text === undefined || text.trim() === "") return defaultPort;
  const port = Number(text);
  if (Number.isInteger(port) && port > 0 && port < 65_536) return port;
  throw new ClearLine(`PORT is "${text}": it must be a whole number from 1 to 65535, as in PORT=${defaultPort} npm start.`);
}

export const readSettings = (env: NodeJS.ProcessEnv = process.env): Settings => ({
  port: readPort(env["PORT"]),
  host: env["HOST"]?.trim() || "127.0.0.1",
  databaseUrl: env["DATABASE_URL"]?.trim() || null,
});

export const isLoopback = (host: string): boolean => host === "localhost" || host === "::1" || host.startsWith("127.");

export function addressOf({ port, host }: Settings): string {
  const anywhere = host === "0.0.0.0" || host === "::";
  return `http://${isLoopback(host) || anywhere ? "localhost" : host}:${port}`;
}

/** `localhost` means both of a machine's own addresses: whoever listens on either would be taken for us. */
export async function refuseTakenPort({ port, host }: Settings): Promise<void> {
  const hosts = isLoopback(host) ? [host, "::1"] : [host];
  const free = await Promise.all(hosts.map((one) => isFree(port, one)));
  if (free.every(Boolean)) return;
  throw new ClearLine(`Port ${port} is taken by another program: choose another, as in PORT=${port === 65_535 ? port - 1 : port + 1} npm start.`);
}
