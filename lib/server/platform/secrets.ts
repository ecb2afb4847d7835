import "server-only";
import { createHash, randomBytes } from "node:crypto";
import { hash, verify } from "@node-rs/argon2";

/** argon2id with the second recommended option of RFC 9106 scaled down to OWASP's 19 MiB, t = 2, p = 1 (from memory). */
const COST = { algorithm: 2, memoryCost: 19_456, timeCost: 2, parallelism: 1 } as const;

export const hashPassword = (password: string): Promise<string> => hash(password, COST);

let decoy: Promise<string> | undefined;
/** Takes as long for an unknown person as for a known one, so the time of an answer tells nothing. */
export async function verifyPassword(passwordHash: string | null, password: string): Promise<boolean> {
  decoy ??= hashPassword(randomBytes(24).toString("hex"));
  const matches = await verify(passwordHash ?? (await decoy), password);
  return passwordHash !== null && matches;
}

/** An unguessable word for a link; the database keeps only its hash. */
export const newToken = (): string => randomBytes(32).toString("base64url");
export const sha256 = (text: string | Uint8Array): string => createHash("sha256").update(text).digest("hex");
