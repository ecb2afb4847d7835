export type Assignment = { readonly columnOf: readonly number[]; readonly cost: number; readonly rowPrices: Float64Array; readonly columnPrices: Float64Array };

/**
 * Each row to a column of its own at least total cost, Infinity meaning not allowed: shortest augmenting paths with row
 * and column prices (Jonker and Volgenant 1987). Exact; equal costs go to the lower column. Null when rows must stay
 * without a column. Prices p satisfy cost >= rowPrice + columnPrice everywhere and add up to the cost.
 */
export function assign(costs: readonly Float64Array[], columns: number): Assignment | null {
  const rows = costs.length;
  const rowPrices = new Float64Array(rows);
  const columnPrices = new Float64Array(columns);
  const rowOf = new Int32Array(columns).fill(-1);
  for (let row = 0; row < rows; row += 1) {
    if (!placeRow(costs, row, rowPrices, columnPrices, rowOf)) return null;
  }
  const columnOf = new Array<number>(rows).fill(-1);
  rowOf.forEach((row, column) => { if (row >= 0) columnOf[row] = column; });
  const cost = columnOf.reduce((sum, column, row) => sum + (costs[row]?.[column] ?? Infinity), 0);
  return { columnOf, cost, rowPrices, columnPrices };
}

function placeRow(costs: readonly Float64Array[], start: number, rowPrices: Float64Array, columnPrices: Float64Array, rowOf: Int32Array): boolean {
  const columns = columnPrices.length;
  const distance = new Float64Array(columns).fill(Infinity);
  const from = new Int32Array(columns).fill(-1);
  const done = new Uint8Array(columns);
  const reached: number[] = [];
  let row = start;
  let via = -1;
  let length = 0;
  for (;;) {
    const nearest = relax(costs[row], rowPrices[row] ?? 0, columnPrices, length, via, { distance, from, done });
    if (nearest < 0) return false;
    length = distance[nearest] ?? 0;
    done[nearest] = 1;
    reached.push(nearest);
    via = nearest;
    row = rowOf[nearest] ?? -1;
    if (row < 0) break;
  }
  rowPrices[start] = (rowPrices[start] ?? 0) + length;
  for (const column of reached) {
    const shift = length - (distance[column] ?? 0);
    columnPrices[column] = (columnPrices[column] ?? 0) - shift;
    const holder = rowOf[column] ?? -1;
    if (holder >= 0) rowPrices[holder] = (rowPrices[holder] ?? 0) + shift;
  }
  turnAlong(from, rowOf, via, start);
  return true;
}

type Front = { readonly distance: Float64Array; readonly from: Int32Array; readonly done: Uint8Array };

/** Lengthens the paths by one row; the nearest column not done yet, or -1. */
function relax(costs: Float64Array | undefined, rowPrice: number, prices: Float64Array, length: number, via: number, { distance, from, done }: Front): number {
  let nearest = -1;
  let least = Infinity;
  for (let column = 0; column < prices.length; column += 1) {
    if (done[column]) continue;
    const reach = length + (costs?.[column] as number) - rowPrice - (prices[column] as number);
    if (reach < (distance[column] as number)) {
      distance[column] = reach;
      from[column] = via;
    }
    if ((distance[column] as number) < least) {
      least = distance[column] as number;
      nearest = column;
    }
  }
  return nearest;
}

function turnAlong(from: Int32Array, rowOf: Int32Array, last: number, start: number): void {
  for (let column = last; column >= 0; ) {
    const before = from[column] ?? -1;
    rowOf[column] = before >= 0 ? rowOf[before] ?? start : start;
    column = before;
  }
}
