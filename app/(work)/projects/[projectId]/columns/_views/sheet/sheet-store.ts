import { readSheetRows, type ColumnsSheet, type SheetColumn } from "#lib/contracts/columns-sheet.ts";
import { gridOrder } from "./grid-order.ts";

export type State = { readonly id: string; readonly done: number; readonly flagged: boolean };
type Heard = State & { readonly seq: number };
type Listener = () => void;
/** What waits on this phone: for which columns, and what it will make of each. */
export type Waiting = { readonly ids: ReadonlySet<string>; readonly expect: (column: SheetColumn) => Omit<State, "id"> };
const NOTHING_WAITS: Waiting = { ids: new Set(), expect: (column) => column };

/** Lowest level first, then grid references as a person orders them. Worked out once: nothing of it changes with a tick. */
function inOrder(sheet: ColumnsSheet): readonly SheetColumn[] {
  const columns = readSheetRows(sheet);
  const elevation = new Map(sheet.levels.map(({ id, elevationMm }) => [id, elevationMm]));
  const place = new Map([...new Set(columns.map(({ gridRef }) => gridRef))].sort(gridOrder).map((gridRef, index) => [gridRef, index]));
  const heightOf = (column: SheetColumn): number => elevation.get(column.fromLevelId) ?? 0;
  const placeOf = (column: SheetColumn): number => place.get(column.gridRef) ?? 0;
  return columns.sort((a, b) => heightOf(a) - heightOf(b) || placeOf(a) - placeOf(b));
}

/** The columns of a sheet on this screen. News replaces single columns, so that one tick redraws one cell. */
export class SheetStore {
  readonly sheet: ColumnsSheet;
  /** As the server says they are. */
  private readonly known: Map<string, SheetColumn>;
  /** As drawn: with what waits on this phone counted in. */
  private readonly drawn: Map<string, SheetColumn>;
  private readonly heard = new Map<string, Heard>();
  private waiting = NOTHING_WAITS;
  private readonly listeners = new Set<Listener>();
  private all: readonly SheetColumn[] | undefined;

  /** `before` is the store this one takes over from: what it heard after the new sheet was read still holds. */
  constructor(sheet: ColumnsSheet, before?: SheetStore) {
    this.sheet = sheet;
    this.known = new Map(inOrder(sheet).map((column) => [column.id, column]));
    this.drawn = new Map(this.known);
    if (!before) return;
    for (const state of before.heard.values()) if (state.seq > sheet.seq) this.hear(state.seq, [state]);
    this.expect(before.waiting);
  }

  get = (id: string): SheetColumn | undefined => this.drawn.get(id);
  /** The same list until something changes. */
  list = (): readonly SheetColumn[] => (this.all ??= [...this.drawn.values()]);

  subscribe = (listener: Listener): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  /** News of an earlier number than what is drawn is old news. */
  hear(seq: number, states: readonly State[]): void {
    const news: string[] = [];
    for (const { id, done, flagged } of states) {
      const column = this.known.get(id);
      if (!column || seq < (this.heard.get(id)?.seq ?? 0)) continue;
      this.heard.set(id, { id, done, flagged, seq });
      this.known.set(id, { ...column, done, flagged });
      news.push(id);
    }
    this.draw(news);
  }

  /** Draws what waits on this phone as if it had arrived. */
  expect(waiting: Waiting): void {
    const touched = [...this.waiting.ids, ...waiting.ids];
    this.waiting = waiting;
    this.draw(touched);
  }

  private draw(ids: readonly string[]): void {
    let isNew = false;
    for (const id of ids) {
      const known = this.known.get(id);
      const drawn = this.drawn.get(id);
      if (!known || !drawn) continue;
      const { done, flagged } = this.waiting.ids.has(id) ? this.waiting.expect(known) : known;
      if (drawn.done === done && drawn.flagged === flagged) continue;
      this.drawn.set(id, { ...known, done, flagged });
      isNew = true;
    }
    if (!isNew) return;
    this.all = undefined;
    for (const listener of this.listeners) listener();
  }
}
