import type { ToTake } from "#lib/trade/gear/gather.ts";
import { isGathering, type KeptGathering, type KeptItem } from "./kept-item.ts";

type Line = KeptGathering["lines"][number];

/** The lines still to be taken once what is kept on this phone has arrived: what went on a truck is to be taken from there. */
export const expectedTake = (take: readonly ToTake[], moves: readonly KeptGathering[]): ToTake[] => moves.reduce<ToTake[]>(after, [...take]);

function after(take: readonly ToTake[], { to, lines }: KeptGathering): ToTake[] {
  return lines.reduce<ToTake[]>((list, line) => {
    const there = list.find((each) => each.itemId === line.itemId && each.placeId === line.fromId)?.columns.find(({ columnId }) => columnId === line.columnId);
    const quantity = Math.min(there?.quantity ?? 0, line.quantity);
    const left = add(list, line, line.fromId, -quantity);
    return to.what === "truck" ? add(left, line, to.truckId, quantity) : left;
  }, [...take]);
}

function add(list: readonly ToTake[], { itemId, columnId }: Line, placeId: string, quantity: number): ToTake[] {
  if (quantity === 0) return [...list];
  const isIt = (line: ToTake): boolean => line.itemId === itemId && line.placeId === placeId;
  const known = list.some(isIt) ? list : [...list, { itemId, placeId, quantity: 0, columns: [] }];
  return known.map((line) => (isIt(line) ? changed(line, columnId, quantity) : line)).filter((line) => line.quantity > 0);
}

function changed(line: ToTake, columnId: string, quantity: number): ToTake {
  const parts = line.columns.some((part) => part.columnId === columnId) ? line.columns : [...line.columns, { columnId, quantity: 0 }];
  const columns = parts.map((part) => (part.columnId === columnId ? { ...part, quantity: part.quantity + quantity } : part)).filter((part) => part.quantity > 0);
  return { ...line, quantity: line.quantity + quantity, columns };
}

/**
 * What this phone gathered and a list does not know of yet: waiting, or taken by the server after the list was read.
 * What is taken back again does not count.
 */
export function gatheredSince(items: readonly KeptItem[], readAt: string): KeptItem<KeptGathering>[] {
  const takenBack = new Set(items.flatMap(({ event, standing }) => (event.kind === "taken-back" && standing !== "refused" ? [event.movementId] : [])));
  return items.filter(isGathering).filter(({ event, standing, takenAt }) =>
    !takenBack.has(event.id) && (standing === "waiting" || (standing === "sent" && Date.parse(takenAt ?? "") > Date.parse(readAt))));
}

/** Whether something gathered later took on what this brought to a truck; then that has to be undone first. */
export const isBuiltOn = ({ event: { to, lines } }: KeptItem<KeptGathering>, all: readonly KeptItem<KeptGathering>[]): boolean =>
  to.what === "truck" && all.some(({ event }) => event.lines.some(({ itemId, fromId }) => fromId === to.truckId && lines.some((line) => line.itemId === itemId)));
