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
};

/** Two heights closer than this are the same level. */
const SAME_HEIGHT_MM = 0.5;

/** `pouredOn` holds the keys of levels that a poured column starts or ends at: those do not move any more. */
export function compareLevels(known: readonly KnownLevelRow[], read: readonly ReadLevel[], pouredOn: ReadonlySet<string>): LevelComparison {
  const create: { name: string; elevation_mm: number }[] = [];
  const change: LevelChange[] = [];
  const refused: Finding[] = [];
  const unusable = new Set<string>();
  const refuse = (message: string, remedy: string) => refused.push({ source: null, message, remedy });
  for (const level of read) {
    const row = known.find((other) => nameKey(other.name) === nameKey(level.name));
    if (level.elevation_mm === null) {
      if (row && row.elevation_mm !== null) continue;
      unusable.add(nameKey(level.name));
      refuse(`Level ${level.name} has no elevation in the file or in the project; lifts on it are left out.`, "Add its elevation to the file, or set the level up in the project first.");
    } else if (row) {
      if (row.elevation_mm !== null && Math.abs(row.elevation_mm - level.elevation_mm) <= SAME_HEIGHT_MM) continue;
      if (pouredOn.has(nameKey(level.name))) refuse(`Level ${level.name} is at ${row.elevation_mm} mm and columns there are poured; the file says ${level.elevation_mm} mm. It stays as it is.`, "If the project is wrong, correct the level by hand.");
      else change.push({ id: row.id, name: row.name, what: "elevation", from: row.elevation_mm, to: level.elevation_mm });
    } else {
      const twin = atHeight(known, level.elevation_mm);
      if (!twin) create.push({ name: level.name, elevation_mm: level.elevation_mm });
      else {
        unusable.add(nameKey(level.name));
        refuse(`Level ${level.name} is at the same elevation as ${twin.name} in the project; lifts on it are left out.`, `Call it ${twin.name} in the file, or rename the level in the project.`);
      }
    }
  }
  return { create, change, refused, unusable };
}

const atHeight = (known: readonly KnownLevelRow[], elevation_mm: number): KnownLevelRow | null =>
  known.find((row) => row.elevation_mm !== null && Math.abs(row.elevation_mm - elevation_mm) <= SAME_HEIGHT_MM) ?? null;
