import { placeKey, splitGridRef } from "#lib/trade/schedule/grid-names.ts";

export type NamedLine = { readonly id: string; readonly axis: string; readonly name: string; readonly offsetMm: number };
export type TakenPlace = { readonly gridRef: string; readonly fromLevelId: string };

/** The reference of a crossing, letter first, as the schedule writes it. */
export function crossingRef(alongX: string, alongY: string): string {
  const split = splitGridRef(`${alongX}/${alongY}`);
  return split ? `${split.lettered}/${split.numbered}` : `${alongX}/${alongY}`;
}

/** Places that have a column from this level, each in one way of writing. */
export const takenFrom = (taken: readonly TakenPlace[], fromLevelId: string): ReadonlySet<string> =>
  new Set(taken.filter((place) => place.fromLevelId === fromLevelId).map((place) => placeKey(place.gridRef)));

/** References typed with commas, semicolons or line ends between. */
export const readTyped = (text: string): string[] => text.split(/[,;\n]+/).map((part) => part.trim()).filter(Boolean);

/** Picked and typed places without repeats, as the schedule writes them. */
export function allPlaces(picked: ReadonlySet<string>, typed: string): string[] {
  const places = new Map<string, string>();
  for (const ref of [...picked, ...readTyped(typed)]) {
    const key = placeKey(ref);
    if (!places.has(key)) places.set(key, splitGridRef(ref) ? key : ref);
  }
  return [...places.values()];
}
