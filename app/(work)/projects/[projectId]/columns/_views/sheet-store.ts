import { useSyncExternalStore } from "react";
import { readSheetRows, type ColumnsSheet, type SheetColumn } from "#lib/contracts/columns-sheet.ts";

type State = { readonly id: string; readonly done: number; readonly flagged: boolean };
type Listener = () => void;

/** The columns of a sheet on this screen. News replaces single columns, so that one tick redraws one cell. */
export class SheetStore {
  readonly ids: readonly string[];
  private readonly columns: Map<string, SheetColumn>;
  private readonly changedAt = new Map<string, number>();
  private readonly listeners = new Set<Listener>();
  private all: readonly SheetColumn[] | undefined;

  constructor(sheet: ColumnsSheet) {
    this.columns = new Map(readSheetRows(sheet).map((column) => [column.id, column]));
    this.ids = [...this.columns.keys()];
  }

  get = (id: string): SheetColumn | undefined => this.columns.get(id);
  /** The same list until something changes. */
  list = (): readonly SheetColumn[] => (this.all ??= [...this.columns.values()]);

  subscribe = (listener: Listener): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  /** News of an earlier number than what is drawn is old news. */
  hear(seq: number, states: readonly State[]): void {
    let isNew = false;
    for (const { id, done, flagged } of states) {
      const column = this.columns.get(id);
      if (!column || seq < (this.changedAt.get(id) ?? 0)) continue;
      this.changedAt.set(id, seq);
      if (column.done === done && column.flagged === flagged) continue;
      this.columns.set(id, { ...column, done, flagged });
      isNew = true;
    }
    if (!isNew) return;
    this.all = undefined;
    for (const listener of this.listeners) listener();
  }
}

export const useSheetColumns = (store: SheetStore): readonly SheetColumn[] =>
  useSyncExternalStore(store.subscribe, store.list, store.list);
