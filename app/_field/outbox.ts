import type { RecordAnswer } from "#lib/contracts/progress.ts";
import { isTick, type KeptItem, type NewItem } from "#app/_field/outbox/kept-item.ts";
import { makeEventId, randomBytes } from "#app/_field/outbox/make-event-ids.ts";
import { neverArrived, nextBatch, onItsWay, outlived, park, pointless, requeue, retryPause, settle, settleMoves, stayed, stumble, type Batch } from "#app/_field/outbox/outbox-plan.ts";
import { openOutboxStore, type OutboxStore } from "#app/_field/outbox/outbox-store.ts";
import { sendBatch } from "#app/_field/outbox/send-batch.ts";
import { noteContact } from "./reception.ts";

export type OutboxView = {
  readonly items: readonly KeptItem[];
  /** False until the phone's store is read. */
  readonly isRead: boolean;
  readonly isLasting: boolean;
  readonly isSignedOut: boolean;
  readonly isSending: boolean;
};

const AGAIN_MS = 30_000;
const MOST_STUMBLES_A_ROUND = 3;
const LOCK = "shutterwright-outbox";

/**
 * What was recorded on this phone: saved first, sent when the server can be reached, kept until it is known to have
 * arrived. One for the page; tabs share the store, take turns in sending and tell each other of every change.
 */
export class Outbox {
  private view: OutboxView = { items: [], isRead: false, isLasting: true, isSignedOut: false, isSending: false };
  private readonly hearers = new Set<() => void>();
  private readonly opened: Promise<OutboxStore>;
  private readonly tabs = typeof BroadcastChannel === "undefined" ? undefined : new BroadcastChannel(LOCK);
  private person: string | undefined;
  private round: Promise<void> | undefined;
  private wanted = false;
  private failures = 0;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private readonly answers = new Map<string, RecordAnswer>();

  constructor() {
    this.opened = openOutboxStore();
    if (this.tabs) this.tabs.onmessage = () => void this.reread();
    void this.reread();
    window.addEventListener("online", this.hurry);
    window.addEventListener("pageshow", this.hurry);
    document.addEventListener("visibilitychange", () => document.visibilityState === "visible" && this.hurry());
    setInterval(() => void this.flush(), AGAIN_MS);
  }

  read = (): OutboxView => this.view;

  follow = (hear: () => void): (() => void) => {
    this.hearers.add(hear);
    return () => this.hearers.delete(hear);
  };

  /** Whose entries go out from now on: those of the person the page was drawn for. */
  serve(personId: string): void {
    if (this.person === personId) return;
    this.person = personId;
    this.set({ isSignedOut: false });
    void this.flush();
  }

  async add(items: readonly NewItem[]): Promise<void> {
    const store = await this.opened;
    await store.add(items);
    await this.changed();
  }

  /** Sends all it can; settled when there is nothing more to send just now. */
  flush(): Promise<void> {
    this.wanted = true;
    this.round ??= this.sendInTurn().finally(() => (this.round = undefined));
    return this.round;
  }

  /** The answer an item got, if it was answered since this page was opened. */
  answerTo = (id: string): RecordAnswer | undefined => this.answers.get(id);

  /** The server kept nothing of what it asked about, so the entry is made anew: the time to take it back starts again. */
  async giveReason(ids: readonly string[], reason: string): Promise<string[]> {
    const made: string[] = [];
    await this.alter(ids, (item) => {
      const madeAt = Date.now();
      const id = makeEventId(madeAt, randomBytes);
      made.push(id);
      return { ...requeue(item, reason), madeAt, tries: 0, event: { ...item.event, id, reason } };
    });
    return made;
  }

  async tryAgain(ids: readonly string[]): Promise<void> {
    await this.alter(ids, (item) => requeue(item, null));
  }

  async drop(ids: readonly string[]): Promise<void> {
    await (await this.opened).remove(ids, ({ standing }) => standing !== "waiting");
    await this.changed();
  }

  /** Strikes out what the server cannot have heard of and tells what is left, which only a withdrawal takes back. */
  async strikeOut(ids: readonly string[]): Promise<readonly KeptItem[]> {
    const store = await this.opened;
    await store.remove(ids, neverArrived);
    const left = (await store.list()).filter((item) => ids.includes(item.event.id));
    await this.changed();
    return left;
  }

  private async alter(ids: readonly string[], change: (item: KeptItem) => KeptItem): Promise<void> {
    const store = await this.opened;
    for (const id of ids) this.answers.delete(id);
    await store.change((await store.list()).filter((item) => ids.includes(item.event.id)).map(change));
    await this.changed();
  }

  private readonly hurry = (): void => {
    this.failures = 0;
    void this.flush();
  };

  private async sendInTurn(): Promise<void> {
    clearTimeout(this.timer);
    // Only where the page was opened safely does the browser let tabs take turns; elsewhere equal ids do no harm.
    const locks = typeof navigator === "undefined" ? undefined : navigator.locks;
    const send = async (): Promise<void> => {
      while (this.wanted) {
        this.wanted = false;
        await this.sendRound();
      }
    };
    await (locks === undefined ? send() : locks.request(LOCK, send));
    this.set({ isSending: false });
  }

  private async sendRound(): Promise<void> {
    const store = await this.opened;
    const passOver = new Set<string>();
    for (let stumbles = 0; stumbles < MOST_STUMBLES_A_ROUND; ) {
      const personId = this.person;
      const batch = personId === undefined ? null : nextBatch(await store.list(), personId, Date.now(), passOver);
      if (personId === undefined || batch === null) return this.tidy(store);
      this.set({ isSending: true });
      const items = await store.change(onItsWay(batch.items));
      if (items.length === 0) continue;
      const outcome = await this.send(store, { ...batch, items }, personId);
      if (outcome === "stop") return;
      if (outcome === "stumbled") {
        stumbles += 1;
        if (items.length === 1) for (const item of items) passOver.add(item.event.id);
      }
      await this.changed();
    }
    this.retryLater();
  }

  private async send(store: OutboxStore, batch: Batch, personId: string): Promise<"on" | "stumbled" | "stop"> {
    const sending = await sendBatch(batch, personId);
    noteContact(sending.kind !== "unreachable" && sending.kind !== "never-left");
    if (sending.kind !== "signed-out") this.set({ isSignedOut: false });
    switch (sending.kind) {
      case "answered":
        this.failures = 0;
        for (const { id } of sending.answer.answers) this.answers.set(id, sending.answer);
        await store.change(settle(batch.items, sending.answer, Date.now()));
        // An answer that says nothing about any item would be asked for without end.
        return batch.items.some(({ event }) => this.answers.has(event.id)) ? "on" : this.stop();
      case "moved":
        this.failures = 0;
        await store.change(settleMoves(batch.items, sending.takenAt, Date.now()));
        return "on";
      case "refused":
        await store.change(this.noteRefusals(park(batch.items, sending.failure, Date.now())));
        await store.remove(pointless(await store.list()), () => true);
        return "on";
      case "stumbled":
        await store.change(stumble(batch.items));
        return "stumbled";
      case "signed-out":
        this.set({ isSignedOut: true });
        return this.stop();
      case "never-left":
        await store.change(stayed(batch.items));
        return this.stop();
      case "unreachable":
        return this.stop();
    }
  }

  /** A message refused as a whole tells nothing of its entries, so those parked for it are given the answer here. */
  private noteRefusals(items: KeptItem[]): KeptItem[] {
    for (const { event: { id, columnId }, standing } of items.filter(isTick))
      if (standing === "refused") this.answers.set(id, { seq: 0, columns: [], answers: [{ id, columnId, outcome: "refused", findings: [] }] });
    return items;
  }

  private async stop(): Promise<"stop"> {
    await this.changed();
    this.retryLater();
    return "stop";
  }

  private retryLater(): void {
    this.failures += 1;
    clearTimeout(this.timer);
    this.timer = setTimeout(() => void this.flush(), retryPause(this.failures, Math.random()));
  }

  private async tidy(store: OutboxStore): Promise<void> {
    const old = outlived(await store.list(), Date.now());
    if (old.length > 0) await store.remove(old.map((item) => item.event.id), () => true);
    await this.changed();
  }

  private async changed(): Promise<void> {
    await this.reread();
    this.tabs?.postMessage("changed");
  }

  private async reread(): Promise<void> {
    const store = await this.opened;
    this.set({ items: await store.list(), isRead: true, isLasting: store.isLasting });
  }

  private set(news: Partial<OutboxView>): void {
    this.view = { ...this.view, ...news };
    for (const hear of this.hearers) hear();
  }
}

let kept: Outbox | undefined;

/** The outbox of this page; only in a browser. */
export const outbox = (): Outbox => (kept ??= new Outbox());
