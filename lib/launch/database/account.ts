import { execFile } from "node:child_process";
import { stat } from "node:fs/promises";
import { dirname, resolve } from "node:path";
import { promisify } from "node:util";
import { ClearLine } from "./clear-line.ts";

const run = promisify(execFile);

/** Whom the database's programs run as. PostgreSQL refuses root, so root lends it an ordinary account. */
export type Account = {
  readonly uid?: number;
  readonly gid?: number;
  /** What to put before a program's own command line. */
  readonly prefix: readonly string[];
};

type Ids = { readonly uid: number; readonly gid: number };

const isRoot = (): boolean => process.getuid?.() === 0;

async function idsOf(name: string): Promise<Ids | undefined> {
  try {
    const [uid, gid] = await Promise.all([run("id", ["-u", name]), run("id", ["-g", name])]);
    return { uid: Number(uid.stdout), gid: Number(gid.stdout) };
  } catch {
    return undefined;
  }
}

async function ordinaryIds(): Promise<Ids> {
  const known = await idsOf("postgres");
  if (known) return known;
  await run("useradd", ["--system", "--user-group", "--no-create-home", "postgres"]).catch(() => undefined);
  const ids = (await idsOf("postgres")) ?? (await idsOf("nobody"));
  if (ids) return ids;
  throw new ClearLine("PostgreSQL cannot run as root, and no account could be made for it: run as an ordinary user, or set DATABASE_URL.");
}

async function canEnter(path: string, ids: Ids): Promise<boolean> {
  for (let folder = resolve(path); ; folder = dirname(folder)) {
    const { mode, uid, gid } = await stat(folder);
    const bit = uid === ids.uid ? 0o100 : gid === ids.gid ? 0o010 : 0o001;
    if ((mode & bit) === 0) return false;
    if (folder === dirname(folder)) return true;
  }
}

/**
 * The account for programs that must reach the given folders. Below a folder only root may enter (a clone in root's
 * home), the program keeps the right to pass through folders while it gives up being root.
 */
export async function databaseAccount(folders: readonly string[]): Promise<Account> {
  if (!isRoot()) return { prefix: [] };
  const ids = await ordinaryIds();
  const reachable = await Promise.all(folders.map((folder) => canEnter(folder, ids)));
  if (reachable.every(Boolean)) return { ...ids, prefix: [] };
  const capability = "+dac_override";
  const prefix = [
    "setpriv", `--reuid=${ids.uid}`, `--regid=${ids.gid}`, "--clear-groups",
    `--inh-caps=${capability}`, `--ambient-caps=${capability}`, "--securebits=+no_setuid_fixup", "--",
  ];
  const [command = "", ...rest] = prefix;
  const enter = 'for folder; do test -x "$folder" || exit 1; done';
  const works = await run(command, [...rest, "sh", "-c", enter, "sh", ...folders]).then(() => true, () => false);
  if (works) return { ...ids, prefix };
  throw new ClearLine(
    `PostgreSQL cannot run as root, and its account cannot enter ${folders.join(" or ")}: move the project, set DATA_DIR to a folder open to it, or run as an ordinary user.`,
  );
}

/** The account's ids for spawn; none when a prefix changes them. */
export function spawnIds(account: Account): { uid?: number; gid?: number } {
  if (account.prefix.length > 0 || account.uid === undefined || account.gid === undefined) return {};
  return { uid: account.uid, gid: account.gid };
}
