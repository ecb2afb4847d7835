import type { Units } from "#app/_ui/value/format-quantity.ts";
import { readLengthMm } from "#app/_ui/value/typed-length.ts";

/** A run of grid lines: the first one's spacing is its distance from the line before it. */
export type GridRun = readonly { readonly name: string; readonly spacingMm: number }[];

const MOST = 200;
/** Bare metric figures below this are metres, others millimetres: no grid is set out at 90 mm or at 100 m. */
const METRES_BELOW = 100;

function namesBetween(from: string, to: string): string[] | undefined {
  if (/^\d+$/.test(from) && /^\d+$/.test(to)) {
    const count = Number(to) - Number(from) + 1;
    return count < 1 || count > MOST ? undefined : Array.from({ length: count }, (_, step) => String(Number(from) + step));
  }
  if (!/^[A-Za-z]$/.test(from) || !/^[A-Za-z]$/.test(to)) return undefined;
  const [first, last] = [from.toUpperCase().charCodeAt(0), to.toUpperCase().charCodeAt(0)];
  return first > last ? undefined : Array.from({ length: last - first + 1 }, (_, step) => String.fromCharCode(first + step));
}

function readNames(text: string): string[] | undefined {
  const names: string[] = [];
  for (const part of text.split(/[,\s]+/).filter(Boolean)) {
    const range = /^(\w+)(?:-|–|\.\.)(\w+)$/.exec(part);
    const found = range ? namesBetween(range[1] ?? "", range[2] ?? "") : [part];
    if (!found) return undefined;
    names.push(...found);
  }
  return names.length === 0 || names.length > MOST ? undefined : names;
}

function readSpacing(text: string, units: Units): number | undefined {
  const isBareMetres = units === "metric" && /^\d+(?:\.\d+)?$/.test(text) && Number(text) < METRES_BELOW;
  const read = readLengthMm(isBareMetres ? `${text} m` : text, units);
  return read === undefined || read <= 0 ? undefined : read;
}

/** `A, B, C, D at 6.0 m`, `1-8 at 7200`, `A-D at 6.0, 7.2, 6.0`: one spacing for all, or one for each gap; undefined when it cannot be read. */
export function readGridEntry(text: string, units: Units): GridRun | undefined {
  const parts = /^(.+?)\s+(?:at|@)\s+(.+)$/i.exec(text.trim());
  const names = readNames(parts?.[1] ?? "");
  const given = (parts?.[2] ?? "").split(/\s*,\s*/).map((each) => readSpacing(each, units));
  if (!names || given.some((each) => each === undefined)) return undefined;
  const spacings = given.filter((each) => each !== undefined);
  const [only] = spacings;
  if (only === undefined) return undefined;
  if (spacings.length === 1) return names.map((name) => ({ name, spacingMm: only }));
  if (spacings.length !== names.length - 1) return undefined;
  return names.map((name, index) => ({ name, spacingMm: spacings[Math.max(index - 1, 0)] ?? only }));
}
