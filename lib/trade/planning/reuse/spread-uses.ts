import { columnAfter, demandBehind, newColumn, type ReuseNetwork } from "./reuse-network.ts";

type Ready = { column: number; usesLeft: number };

/** How many more uses the panel in each column's hand has, given who serves whom; negative where a panel is asked too often. */
export function usesLeftAfter(network: ReuseNetwork, columnOf: readonly number[]): number[] {
  const left: number[] = [];
  columnOf.forEach((column, row) => {
    const behind = demandBehind(network, column);
    const had = behind >= 0 ? left[behind] ?? 0 : freshUses(network, column);
    left[row] = had - 1;
  });
  return left;
}

const freshUses = (network: ReuseNetwork, column: number): number => {
  const panel = network.panels[column];
  return (panel ? panel.usesLeft : network.order.newPanelUses) ?? Infinity;
};

/**
 * Panels of one size at one place that are ready together can change roles at no cost. Going through the demands in order
 * of start, each takes from those alike the one with most uses left, or with fewest if it is the last to be served in the
 * chain. One whose panels are all used up gets a new one, so that the result always holds, at more cost if need be.
 */
export function spreadUses(network: ReuseNetwork, columnOf: readonly number[]): number[] {
  const served = new Set(columnOf);
  const pool = new Map<string, Ready[]>();
  const put = (column: number, usesLeft: number) => {
    const kind = kindOfColumn(network, column);
    pool.set(kind, [...(pool.get(kind) ?? []), { column, usesLeft }]);
  };
  network.panels.forEach((_, column) => { if (served.has(column)) put(column, freshUses(network, column)); });
  return columnOf.map((column, row) => {
    const last = !served.has(columnAfter(network, row));
    const isNew = column >= network.panels.length && demandBehind(network, column) < 0;
    const taken = isNew ? null : takeAlike(network, pool.get(kindOfColumn(network, column)) ?? [], row, last);
    if (!last) put(columnAfter(network, row), (taken?.usesLeft ?? network.order.newPanelUses ?? Infinity) - 1);
    return taken?.column ?? newColumn(network, row);
  });
}

function takeAlike(network: ReuseNetwork, alike: Ready[], row: number, last: boolean): Ready | null {
  const ready = alike
    .filter(({ column, usesLeft }) => usesLeft > 0 && (network.costs[row]?.[column] ?? Infinity) < Infinity)
    .sort((a, b) => (last ? compare(a.usesLeft, b.usesLeft) : compare(b.usesLeft, a.usesLeft)) || a.column - b.column);
  const taken = ready[0] ?? null;
  if (taken) alike.splice(alike.indexOf(taken), 1);
  return taken;
}

const compare = (a: number, b: number): number => (a < b ? -1 : a > b ? 1 : 0);

/** Size and place of the panel behind a column; columns of one kind are alike but for day and uses. */
export function kindOfColumn(network: ReuseNetwork, column: number): string {
  const from = network.panels[column] ?? network.demands[demandBehind(network, column)];
  return from ? `${from.widthMm}x${from.heightMm}x${from.thicknessMm}@${from.place}` : "new";
}
