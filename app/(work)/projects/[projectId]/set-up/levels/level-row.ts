import type { Units } from "#app/_ui/value/format-quantity.ts";
import { heightText, lengthText, readHeightMm, readLengthMm, readShown } from "#app/_ui/value/typed-length.ts";

export type Level = {
  readonly id: string; readonly name: string; readonly elevationMm: number; readonly slabDepthMm: number; readonly beamDepthMm: number;
};

/** A level as it stands in the table while someone types; `given` is the level it began as. */
export type LevelRow = {
  readonly key: string; readonly given: Level | undefined; readonly name: string; readonly elevation: string; readonly slab: string; readonly beam: string;
};

export const toLevelRow = (level: Level, units: Units): LevelRow => ({
  key: level.id, given: level, name: level.name, elevation: heightText(level.elevationMm, units),
  slab: lengthText(level.slabDepthMm, units), beam: lengthText(level.beamDepthMm, units),
});

export function elevationMm({ given, elevation }: LevelRow, units: Units): number | undefined {
  const shown = given && { text: heightText(given.elevationMm, units), mm: given.elevationMm };
  return readShown(elevation, shown, (typed) => readHeightMm(typed, units));
}

function depthMm(text: string, givenMm: number | undefined, units: Units): number | undefined {
  const shown = givenMm === undefined ? undefined : { text: lengthText(givenMm, units), mm: givenMm };
  return readShown(text, shown, (typed) => readLengthMm(typed, units));
}

/** `Level 2` is followed by `Level 3`; a name without a figure by none. */
const nameAfter = (name: string): string =>
  /\d/.test(name) ? name.replace(/\d+(?=\D*$)/, (figure) => String(Number(figure) + 1).padStart(figure.length, "0")) : "";

/** The next floor up: as high as the last storey, with the same slab and beams. */
export function rowAbove(rows: readonly LevelRow[], units: Units, key: string): LevelRow {
  const [below, last] = [rows.at(-2), rows.at(-1)];
  const top = last && elevationMm(last, units);
  const under = below && elevationMm(below, units);
  const elevation = top !== undefined && under !== undefined ? heightText(top + top - under, units) : last ? "" : heightText(0, units);
  return { key, given: undefined, name: last ? nameAfter(last.name) : "", elevation, slab: last?.slab ?? "", beam: last?.beam ?? "" };
}

/** What the contract takes; a figure that cannot be read goes as no number and is refused with its row. */
export const toLevel = (row: LevelRow, units: Units) => ({
  ...(row.given === undefined ? {} : { id: row.given.id }),
  name: row.name,
  elevationMm: elevationMm(row, units) ?? Number.NaN,
  slabDepthMm: depthMm(row.slab, row.given?.slabDepthMm, units) ?? Number.NaN,
  beamDepthMm: row.beam.trim() === "" ? 0 : depthMm(row.beam, row.given?.beamDepthMm, units) ?? Number.NaN,
});

/** From this level to the next in the list. */
export function storeyMm(rows: readonly LevelRow[], index: number, units: Units): number | undefined {
  const [here, above] = [rows[index], rows[index + 1]].map((row) => row && elevationMm(row, units));
  return here === undefined || above === undefined ? undefined : above - here;
}
