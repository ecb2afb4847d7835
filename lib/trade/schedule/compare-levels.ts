import { nameKey } from "./level-order.ts";
import type { ReadLevel } from "./lift.ts";
import type { Finding } from "./table/raw-lift.ts";

export type KnownLevelRow = { readonly id: string; readonly name: string; readonly elevation_mm: number | null };
export type LevelChange = { readonly id: string; readonly name: string; readonly what: "elevation"; readonly from: number | null; readonly to: number };

export type LevelComparison = {
  readonly create: readonly { readonly name: string; readonly elevation_mm: number }[];
  readonly change: readonly LevelChange[];
  readonly refused: readonly Finding[];
  /** Keys of levels that cannot be taken in; no column can stand on them. */
  readonly unusable: ReadonlySet<string>;
  /** Where every level is once the file has been taken in, by its key. */
  readonly heights: ReadonlyMap<string, number>;
};

/** Two heights closer than this are the same level. */
const SAME_HEIGHT_MM = 0.5;

type Move = { readonly row: KnownLevelRow; readonly to: number };
type Refuse = (message: string, remedy: string) => void;

/** `pouredOn` holds the keys of levels that a poured column starts or ends at: those do not move any more. */
export function compareLevels(known: readonly KnownLevelRow[], read: readonly ReadLevel[], pouredOn: ReadonlySet<string>): LevelComparison {
  const refused: Finding[] = [];
  const unusable = new Set<string>();
  const refuse: Refuse = (message, remedy) => refused.push({ source: null, message, remedy });
  const moves: Move[] = [];
  const fresh: { name: string; elevation_mm: number }[] = [];
  for (const { name, elevation_mm } of read) {
    const row = known.find((other) => nameKey(other.name) === nameKey(name));
    if (elevation_mm === null) {
      if (row && row.elevation_mm !== null) continue;
      unusable.add(nameKey(name));
      refuse(`Level ${name} has no elevation in the file or in the project; lifts on it are left out.`, "Add its elevation to the file, or set the level up in the project first.");
    } else if (!row) fresh.push({ name, elevation_mm });
    else if (row.elevation_mm === null || !isSameHeight(row.elevation_mm, elevation_mm)) {
      if (pouredOn.has(nameKey(name))) refuse(`Level ${name} is at ${row.elevation_mm} mm and columns there are poured; the file says ${elevation_mm} mm. It stays as it is.`, "If the project is wrong, correct the level by hand.");
      else moves.push({ row, to: elevation_mm });
    }
  }
  const moved = possibleMoves(known, moves, (level, inTheWay) => {
    unusable.add(nameKey(level.row.name)).add(nameKey(inTheWay));
    const why = `Level ${level.row.name} cannot go to ${level.to} mm, where ${inTheWay} stays. It stays at ${level.row.elevation_mm} mm, and lifts on either are left out.`;
    refuse(why, `Give ${inTheWay}'s new elevation in the file too, or correct the levels by hand.`);
  });
  const heights = known.map((row) => ({ name: row.name, at: moved.find((move) => move.row === row)?.to ?? row.elevation_mm }));
  const create = fresh.filter(({ name, elevation_mm }) => {
    const twin = heights.find(({ at }) => at !== null && isSameHeight(at, elevation_mm));
    if (!twin) return true;
    unusable.add(nameKey(name));
    refuse(`Level ${name} is at the same elevation as ${twin.name} in the project; lifts on it are left out.`, `Call it ${twin.name} in the file, or rename the level in the project.`);
    return false;
  });
  const settled = [...heights.map(({ name, at }) => [nameKey(name), at] as const), ...create.map(({ name, elevation_mm }) => [nameKey(name), elevation_mm] as const)];
  return {
    create, refused, unusable,
    change: moved.map(({ row, to }) => ({ id: row.id, name: row.name, what: "elevation", from: row.elevation_mm, to })),
    heights: new Map(settled.flatMap(([key, at]) => (at === null ? [] : [[key, at]]))),
  };
}

/** Levels may move through each other's old heights, but not to where one stays; each that stays may hold up another. */
function possibleMoves(known: readonly KnownLevelRow[], moves: readonly Move[], refuse: (move: Move, inTheWay: string) => void): readonly Move[] {
  const staying = known.filter((row) => moves.every((move) => move.row !== row));
  for (const move of moves) {
    const inTheWay = staying.find((row) => row.elevation_mm !== null && isSameHeight(row.elevation_mm, move.to));
    if (!inTheWay) continue;
    refuse(move, inTheWay.name);
    return possibleMoves(known, moves.filter((other) => other !== move), refuse);
  }
  return moves;
}

const isSameHeight = (one: number, other: number): boolean => Math.abs(one - other) <= SAME_HEIGHT_MM;
