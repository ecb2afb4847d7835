import { readdir } from "node:fs/promises";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";

/** How far ours may be from the printed figure: in its own unit, as a part of it, or both added up. The printed figure's own rounding is in it. */
export type Within = { readonly abs?: number; readonly rel?: number };

type Value = number | readonly number[];
export type PublishedFigure = {
  readonly expected: Value;
  /** Empty for a bare number. */
  readonly unit: string;
  readonly within: Within;
  /** Our functions with the source's inputs. A row of figures answers as a row of the same length. */
  readonly ours: () => Value;
};
export type PublishedCase = {
  /** "CASE-" and its number, or the line of a whole table. */
  readonly id: string;
  /** Page, table or clause in the source. */
  readonly at: string;
  /** The inputs in words. */
  readonly what: string;
  /** By the name of the quantity. */
  readonly figures: Readonly<Record<string, PublishedFigure>>;
};
/**
 * What one source prints about one topic. It stands as `published` in a file `<source>.figures.ts` of a topic's folder below `tests/validation`;
 * `published-figures.test.ts` makes a test of every case there. `source` says title, year and edition, and "from memory" where it is: the cases of
 * one source stand under one name however many files they fill.
 */
export type PublishedSource = { readonly source: string; readonly cases: readonly PublishedCase[] };

export const abs = (within: number): Within => ({ abs: within });
/** As a part of the printed figure: 0.02 is 2 %. */
export const rel = (within: number): Within => ({ rel: within });
export const figure = (expected: Value, unit: string, within: Within, ours: () => Value): PublishedFigure => ({ expected, unit, within, ours });

/** One printed number beside ours. */
export type Deviation = {
  readonly source: string;
  readonly topic: string;
  readonly id: string;
  readonly quantity: string;
  readonly unit: string;
  readonly expected: number;
  readonly ours: number;
  /** Allowed distance in the figure's unit. */
  readonly allowed: number;
  /** Distance as a part of the printed figure, in percent; of a printed 0 it is 0 or infinite. */
  readonly percent: number;
  readonly agrees: boolean;
};

/** A hair for the binary form of decimal figures. */
const DUST = 1e-9;
const rowOf = (value: Value): readonly number[] => (typeof value === "number" ? [value] : value);

export const allowedDistance = (expected: number, { abs: units = 0, rel: part = 0 }: Within): number => units + part * Math.abs(expected);

export function deviationsOf(source: string, topic: string, { id, figures }: PublishedCase): readonly Deviation[] {
  return Object.entries(figures).flatMap(([quantity, { expected, unit, within, ours }]) => {
    const [printed, got] = [rowOf(expected), rowOf(ours())];
    if (printed.length !== got.length) throw new Error(`${id} ${quantity}: ${printed.length} figures printed, ${got.length} of ours`);
    return printed.map((one, index): Deviation => {
      const our = got[index] ?? Number.NaN;
      const distance = Math.abs(our - one);
      const allowed = allowedDistance(one, within);
      const percent = distance === 0 ? 0 : (100 * distance) / Math.abs(one);
      return { source, topic, id, quantity, unit, expected: one, ours: our, allowed, percent, agrees: distance <= allowed + DUST * Math.max(1, Math.abs(one)) };
    });
  });
}

const FOLDER = resolve("tests/validation");
const ENDING = ".figures.ts";

/** Every source under `tests/validation`, with the topic's folder it stands in. */
export async function publishedSources(): Promise<readonly (PublishedSource & { readonly topic: string })[]> {
  const files = (await readdir(FOLDER, { recursive: true })).filter((file) => file.endsWith(ENDING)).sort();
  return Promise.all(
    files.map(async (file) => {
      const { published } = (await import(pathToFileURL(join(FOLDER, file)).href)) as { published: PublishedSource };
      return { ...published, topic: file.split(/[\\/]/)[0] ?? "" };
    }),
  );
}

/** Every printed number beside ours: what the table "source, cases, largest deviation" is made of. */
export async function allDeviations(): Promise<readonly Deviation[]> {
  return (await publishedSources()).flatMap(({ source, topic, cases }) => cases.flatMap((one) => deviationsOf(source, topic, one)));
}
