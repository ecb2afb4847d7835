import { openDB, type DBSchema, type IDBPDatabase } from "idb";
import type { Counts } from "./docket-fields.ts";

/** A docket as far as it was filled in; `fields` by their names, the photos with it. */
export type Draft = { readonly fields: Readonly<Record<string, string>>; readonly counts: Counts; readonly photos: readonly File[]; readonly keptAt: number };
type Kept = DBSchema & { drafts: { key: string; value: Draft } };

let opened: Promise<IDBPDatabase<Kept>> | undefined;
const drafts = (): Promise<IDBPDatabase<Kept>> =>
  (opened ??= openDB<Kept>("shutterwright-dockets", 1, { upgrade: (fresh) => void fresh.createObjectStore("drafts"), blocking: (_current, _wanted, event) => (event.target as IDBDatabase).close() }));

/** Undefined where there is none, or this browser keeps nothing. */
export const findDraft = async (key: string): Promise<Draft | undefined> => (await drafts().catch(() => undefined))?.get("drafts", key).catch(() => undefined);

/** False where this browser keeps nothing: then closing the page loses the entry. */
export const keepDraft = (key: string, draft: Draft): Promise<boolean> =>
  drafts().then((db) => db.put("drafts", draft, key)).then(() => true, () => false);

export const dropDraft = async (key: string): Promise<void> => (await drafts().catch(() => undefined))?.delete("drafts", key).catch(() => undefined);
