import type { Units } from "#app/_ui/value/format-quantity.ts";
import { heightText, lengthText, readHeightMm, readLengthMm } from "#app/_ui/value/typed-length.ts";

export type Level = {
  readonly id: string; readonly name: string; readonly elevationMm: number; readonly slabDepthMm: number; readonly beamDepthMm: number;
};

/** A level as it stands in the table while someone types. */
export type LevelRow = {
  readonly key: string; readonly id: string | undefined; readonly name: string; readonly elevation: string; readonly slab: string; readonly beam: string;
};

export const toLevelRow = (level: Level, units: Units): LevelRow => ({
  key: level.id, id: level.id, name: level.name, elevation: heightText(level.elevationMm, units),
  slab: lengthText(level.slabDepthMm, units), beam: lengthText(level.beamDepthMm, units),
});

/** `Level 2` is followed by `Level 3`; a name without a figure by none. */
const nameAfter = (name: string): string =>
  /\d/.test(name) ? name.replace(/\d+(?=\D*$)/, (figure) => String(Number(figure) + 1).padStart(figure.length, "0")) : "";

/** The next floor up: as high as the last storey, with the same slab and beams. */
export function rowAbove(rows: readonly LevelRow[], units: Units, key: string): LevelRow {
  const [below, last] = [rows.at(-2), rows.at(-1)];
  const top = last && readHeightMm(last.elevation, units);
  const under = below && readHeightMm(below.elevation, units);
  const elevation = top !== undefined && under !== undefined ? heightText(top + top - under, units) : last ? "" : heightText(0, units);
  return { key, id: undefined, name: last ? nameAfter(last.name) : "", elevation, slab: last?.slab ?? "", beam: last?.beam ?? "" };
}

/** What the contract takes; a figure that cannot be read goes as no number and is refused with its row. */
export const toLevel = (row: LevelRow, units: Units) => ({
  ...(row.id === undefined ? {} : { id: row.id }),
  name: row.name,
  elevationMm: readHeightMm(row.elevation, units) ?? Number.NaN,
  slabDepthMm: readLengthMm(row.slab, units) ?? Number.NaN,
  beamDepthMm: row.beam.trim() === "" ? 0 : readLengthMm(row.beam, units) ?? Number.NaN,
});

/** From this level to the next in the list. */
export function storeyMm(rows: readonly LevelRow[], index: number, units: Units): number | undefined {
  const [here, above] = [rows[index], rows[index + 1]].map((row) => row && readHeightMm(row.elevation, units));
  return here === undefined || above === undefined ? undefined : above - here;
}
