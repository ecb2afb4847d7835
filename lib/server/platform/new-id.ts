import "server-only";
import { randomBytes } from "node:crypto";
import { uuidv7From } from "#lib/kernel/ids.ts";

export const newId = (): string => uuidv7From(Date.now(), randomBytes(10));
