import { openDB, type DBSchema, type IDBPDatabase } from "idb";
import type { KeptItem, NewItem } from "./kept-item.ts";

type Kept = DBSchema & { items: { key: number; value: KeptItem } };

/** Where the outbox keeps its items. */
export type OutboxStore = {
  /** False when this browser lets nothing be saved: then a reload loses what was not sent. */
  readonly isLasting: boolean;
  list(): Promise<KeptItem[]>;
  add(items: readonly NewItem[]): Promise<void>;
  /** Changes items that are still there and tells which; one taken out meanwhile stays out. */
  change(items: readonly KeptItem[]): Promise<KeptItem[]>;
  /** Takes out the items of these ids, as far as `may` holds for them as they now are; tells which. */
  remove(ids: readonly string[], may: (item: KeptItem) => boolean): Promise<KeptItem[]>;
};

export async function openOutboxStore(): Promise<OutboxStore> {
  try {
    const db = await openDB<Kept>("shutterwright-outbox", 1, {
      upgrade: (fresh) => void fresh.createObjectStore("items", { keyPath: "place", autoIncrement: true }),
      // A newer version in another tab may go ahead.
      blocking: (_current, _wanted, event) => (event.target as IDBDatabase).close(),
    });
    return new LastingStore(db);
  } catch {
    return new FleetingStore();
  }
}

class LastingStore implements OutboxStore {
  readonly isLasting = true;

  constructor(private readonly db: IDBPDatabase<Kept>) {}

  list(): Promise<KeptItem[]> {
    return this.db.getAll("items");
  }

  async add(items: readonly NewItem[]): Promise<void> {
    const tx = this.db.transaction("items", "readwrite", { durability: "strict" });
    for (const item of items) void tx.store.add(item as KeptItem);
    await tx.done;
  }

  async change(items: readonly KeptItem[]): Promise<KeptItem[]> {
    const tx = this.db.transaction("items", "readwrite");
    const there: KeptItem[] = [];
    for (const item of items) {
      if ((await tx.store.getKey(item.place)) === undefined) continue;
      void tx.store.put(item);
      there.push(item);
    }
    await tx.done;
    return there;
  }

  async remove(ids: readonly string[], may: (item: KeptItem) => boolean): Promise<KeptItem[]> {
    const tx = this.db.transaction("items", "readwrite");
    const out = (await tx.store.getAll()).filter((item) => ids.includes(item.event.id) && may(item));
    for (const { place } of out) void tx.store.delete(place);
    await tx.done;
    return out;
  }
}

/** In memory, where the browser allows nothing else. */
class FleetingStore implements OutboxStore {
  readonly isLasting = false;
  private readonly items = new Map<number, KeptItem>();
  private last = 0;

  list(): Promise<KeptItem[]> {
    return Promise.resolve([...this.items.values()]);
  }

  add(items: readonly NewItem[]): Promise<void> {
    for (const item of items) this.items.set((this.last += 1), { ...item, place: this.last });
    return Promise.resolve();
  }

  change(items: readonly KeptItem[]): Promise<KeptItem[]> {
    const there = items.filter((item) => this.items.has(item.place));
    for (const item of there) this.items.set(item.place, item);
    return Promise.resolve(there);
  }

  remove(ids: readonly string[], may: (item: KeptItem) => boolean): Promise<KeptItem[]> {
    const out = [...this.items.values()].filter((item) => ids.includes(item.event.id) && may(item));
    for (const { place } of out) this.items.delete(place);
    return Promise.resolve(out);
  }
}
