/** `most` copies at most, each `size` long and worth `value`. */
export type KnapsackItem = { readonly size: number; readonly value: number; readonly most: number };
export type Filling = { readonly room: number; readonly value: number; readonly counts: ReadonlyMap<number, number> };
type Bundle = { readonly item: number; readonly copies: number; readonly size: number; readonly value: number };

/**
 * For each room its best filling, and other good ones worth more than `floors` asks: for every item the best filling of
 * the items up to it that holds it. Exact, by dynamic programming over whole lengths, copies taken in bundles of 1, 2, 4…
 */
export function fillings(items: readonly KnapsackItem[], rooms: readonly number[], floors: readonly number[]): Filling[] {
  const bundles = bundled(items);
  const room = Math.max(0, ...rooms);
  const best = new Float64Array(room + 1);
  const taken = new Uint8Array(bundles.length * (room + 1));
  const starts: { bundle: number; room: number; value: number }[] = [];
  bundles.forEach((bundle, row) => {
    const at = row * (room + 1);
    rooms.forEach((size, which) => {
      const value = size >= bundle.size ? (best[size - bundle.size] ?? 0) + bundle.value : 0;
      if (value > (floors[which] ?? 0)) starts.push({ bundle: row, room: size, value });
    });
    addBundle(best, taken, at, bundle);
  });
  return starts.map((start) => traceBack(bundles, taken, room, start, true));
}

/** The best filling of one room alone. */
export function bestFilling(items: readonly KnapsackItem[], room: number): Filling | null {
  const bundles = bundled(items);
  const best = new Float64Array(room + 1);
  const taken = new Uint8Array(bundles.length * (room + 1));
  bundles.forEach((bundle, row) => addBundle(best, taken, row * (room + 1), bundle));
  const value = best[room] ?? 0;
  return value > 0 ? traceBack(bundles, taken, room, { bundle: bundles.length - 1, room, value }, false) : null;
}

function addBundle(best: Float64Array, taken: Uint8Array, at: number, bundle: Bundle): void {
  for (let filled = best.length - 1; filled >= bundle.size; filled -= 1) {
    const value = (best[filled - bundle.size] as number) + bundle.value;
    if (value > (best[filled] as number) + 1e-12) {
      best[filled] = value;
      taken[at + filled] = 1;
    }
  }
}

// Beyond this much work the rooms are first measured in coarser units.
const COARSE_FROM = 4_000_000;
const COARSE_ROOM = 2_500;

/** The same in coarser units, sizes rounded up: fillings that do fit, fast, but perhaps not the best. Empty when the task is small anyway. */
export function roughFillings(items: readonly KnapsackItem[], rooms: readonly number[], floors: readonly number[]): Filling[] {
  const room = Math.max(0, ...rooms);
  const unit = Math.ceil(room / COARSE_ROOM);
  if (items.length * room < COARSE_FROM || unit < 2) return [];
  const coarse = fillings(items.map((item) => ({ ...item, size: Math.ceil(item.size / unit) })), rooms.map((size) => Math.floor(size / unit)), floors);
  return coarse.flatMap((filling) => rooms.filter((size) => Math.floor(size / unit) === filling.room).map((size) => ({ ...filling, room: size })));
}

function bundled(items: readonly KnapsackItem[]): Bundle[] {
  return items.flatMap((item, index) => {
    const bundles: Bundle[] = [];
    let left = item.value > 0 ? item.most : 0;
    for (let copies = 1; left > 0; copies *= 2) {
      const taken = Math.min(copies, left);
      bundles.push({ item: index, copies: taken, size: item.size * taken, value: item.value * taken });
      left -= taken;
    }
    return bundles;
  });
}

function traceBack(bundles: readonly Bundle[], taken: Uint8Array, room: number, start: { bundle: number; room: number; value: number }, holdsStart: boolean): Filling {
  const counts = new Map<number, number>();
  let left = start.room;
  for (let row = start.bundle; row >= 0; row -= 1) {
    const bundle = bundles[row];
    if (!bundle || (!taken[row * (room + 1) + left] && !(holdsStart && row === start.bundle))) continue;
    counts.set(bundle.item, (counts.get(bundle.item) ?? 0) + bundle.copies);
    left -= bundle.size;
  }
  return { room: start.room, value: start.value, counts };
}
