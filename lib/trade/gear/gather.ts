import { WIDTH_TOLERANCE_MM, type FacePanel } from "./set-fit.ts";

export type GatherFor = {
  readonly columnId: string;
  /** Its own place, once something was brought there, and what lies there: that is gathered already. */
  readonly placeId: string | null;
  readonly there: readonly { readonly itemId: string; readonly quantity: number }[];
  /** Panels of the set that is assigned, or spoken for. */
  readonly panels: readonly string[];
  /** Its faces that no panel is named for. */
  readonly faces: readonly FacePanel[];
  readonly clamping: readonly { readonly itemId: string; readonly quantity: number }[];
  /** Lengths of corner strip, in millimetres, and how many. */
  readonly fillets: { readonly lengthMm: number; readonly count: number } | null;
};
export type StockedPanel = { readonly itemId: string; readonly placeId: string | null; readonly isAtHand: boolean; readonly isFree: boolean; readonly widthMm: number; readonly heightMm: number };
/** What lies where it can be taken from, the first place first. */
export type Stocked = { readonly itemId: string; readonly placeId: string; readonly quantity: number };

export type ToTake = Stocked & { /** Which column gets how many of them. */ readonly columns: readonly { readonly columnId: string; readonly quantity: number }[] };

export type GatherList = {
  readonly take: readonly ToTake[];
  /** Panels of an assigned set that are not at hand: still on a column, or in another yard. */
  readonly elsewhere: readonly { readonly itemId: string; readonly placeId: string | null }[];
  readonly cutPanels: readonly { readonly widthMm: number; readonly heightMm: number; readonly count: number }[];
  readonly cutFillets: readonly { readonly lengthMm: number; readonly count: number }[];
  readonly short: readonly { readonly itemId: string; readonly quantity: number }[];
};

/** The free panel that closes a face with least left over; of two alike the one that comes first. */
function bestFor(face: FacePanel, panels: readonly StockedPanel[]): StockedPanel | undefined {
  const closing = panels.filter(({ widthMm, heightMm }) => Math.abs(widthMm - face.widthMm) <= WIDTH_TOLERANCE_MM && heightMm >= face.heightMm);
  return closing.reduce<StockedPanel | undefined>((best, panel) => (best === undefined || panel.heightMm < best.heightMm ? panel : best), undefined);
}

/**
 * What to take from where, what to cut and what is short, so that these columns can be stood and clamped. Columns come
 * in the order in which they are to be served: what is there goes to the first.
 */
export function gatherList(columns: readonly GatherFor[], stocked: readonly Stocked[], panels: readonly StockedPanel[]): GatherList {
  const left = stocked.map((line) => ({ ...line }));
  const free = new Map(panels.filter(({ isAtHand, isFree }) => isAtHand && isFree).map((panel) => [panel.itemId, panel]));
  const [take, short, cut, fillets] = [new Map<string, ToTake>(), new Map<string, number>(), new Map<string, GatherList["cutPanels"][number]>(), new Map<number, number>()];
  const elsewhere: GatherList["elsewhere"][number][] = [];
  const taken = (columnId: string, line: Stocked): void => {
    const key = `${line.placeId} ${line.itemId}`;
    const { quantity, columns: before } = take.get(key) ?? { quantity: 0, columns: [] };
    take.set(key, { ...line, quantity: quantity + line.quantity, columns: [...before, { columnId, quantity: line.quantity }] });
  };
  for (const column of columns) {
    const brought = new Map(panels.filter(({ placeId, isFree }) => isFree && placeId !== null && placeId === column.placeId).map((panel) => [panel.itemId, panel]));
    for (const itemId of column.panels) {
      const panel = panels.find((each) => each.itemId === itemId);
      if (panel && panel.placeId !== null && panel.placeId === column.placeId) continue;
      if (panel?.isAtHand && panel.placeId !== null) taken(column.columnId, { itemId, placeId: panel.placeId, quantity: 1 });
      else elsewhere.push({ itemId, placeId: panel?.placeId ?? null });
    }
    for (const face of column.faces) {
      const closing = bestFor(face, [...brought.values()]);
      if (closing) {
        brought.delete(closing.itemId);
        continue;
      }
      const panel = bestFor(face, [...free.values()]);
      if (panel && panel.placeId !== null) {
        free.delete(panel.itemId);
        taken(column.columnId, { itemId: panel.itemId, placeId: panel.placeId, quantity: 1 });
      } else {
        const key = `${face.widthMm} ${face.heightMm}`;
        cut.set(key, { widthMm: face.widthMm, heightMm: face.heightMm, count: (cut.get(key)?.count ?? 0) + 1 });
      }
    }
    for (const { itemId, quantity } of column.clamping) {
      let missing = quantity - (column.there.find((line) => line.itemId === itemId)?.quantity ?? 0);
      for (const line of left) {
        const pieces = line.itemId === itemId ? Math.min(Math.max(missing, 0), line.quantity) : 0;
        if (pieces <= 0) continue;
        line.quantity -= pieces;
        missing -= pieces;
        taken(column.columnId, { itemId, placeId: line.placeId, quantity: pieces });
      }
      if (missing > 0) short.set(itemId, (short.get(itemId) ?? 0) + missing);
    }
    if (column.fillets) fillets.set(column.fillets.lengthMm, (fillets.get(column.fillets.lengthMm) ?? 0) + column.fillets.count);
  }
  return {
    take: [...take.values()], elsewhere, cutPanels: [...cut.values()].sort((a, b) => b.widthMm - a.widthMm || b.heightMm - a.heightMm),
    cutFillets: [...fillets].map(([lengthMm, count]) => ({ lengthMm, count })), short: [...short].map(([itemId, quantity]) => ({ itemId, quantity })),
  };
}
