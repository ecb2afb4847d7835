import { plainMarks, readLength } from "./read-length.ts";

/** "As above", as draughtsmen write it. */
export const isDitto = (text: string): boolean =>
  /^(?:do\.?|ditto|-*\s*(?:"\s*)+-*|\u3003|as above)$/i.test(plainMarks(text));

/** No column here. */
export const isNil = (text: string): boolean => /^(?:-{1,3}|nil|none|n\/a)$/i.test(plainMarks(text));

/** Text that a spreadsheet would run if it were opened there; signed lengths, dashes and ditto marks are not. */
export function looksLikeFormula(text: string): boolean {
  if (/^[=@]/.test(text)) return true;
  return /^[+-](?!\s)/.test(text) && !isNil(text) && !isDitto(text) && readLength(text, "mm") === null;
}

export const looksLikeDate = (text: string): boolean => /^\d{4}-\d{2}-\d{2}$/.test(text);

/** `A/1, B/1; C/1 and D/1`, one to a line too. */
export const splitList = (text: string): string[] =>
  text.split(/[,;\n&]|\sand\s/i).map((part) => part.trim()).filter((part) => part !== "");

const LONGEST_RUN = 200;

/** Marks with runs written out: `C1-C4`, `C1 to C4`. A run needs the same letters at both ends; anything else stays as it is. */
export const splitMarks = (text: string): string[] =>
  splitList(text).flatMap((part) => {
    const run = /^([A-Za-z]+)(\d{1,4})\s*(?:-|to)\s*([A-Za-z]+)(\d{1,4})$/i.exec(plainMarks(part));
    const [first, last] = [Number(run?.[2]), Number(run?.[4])];
    if (!run || run[1] !== run[3] || last <= first || last - first > LONGEST_RUN) return [part];
    return Array.from({ length: last - first + 1 }, (_, index) => `${run[1]}${first + index}`);
  });

/** A run of grid references such as `A/1 - A/4`, which does not say which grid lines lie between. */
export const isGridRun = (text: string): boolean =>
  /\S\s+(?:to|-)\s+\S/i.test(plainMarks(text)) || /\d\s*-\s*[A-Za-z]+\s*\/\s*\d/.test(plainMarks(text));

/** `L1 (RL 4.200)`, `L1 SSL +4.200`: a level that carries its own height; null for one that does not. */
export function splitLevelHeight(text: string): { readonly level: string; readonly elevation: string } | null {
  const found = /^(.*?\S)[\s(,@]+((?:RL|SSL|FFL|EL)\b\.?\s*[+-]?[\d.,]+\s*m?m?)\)?$/i.exec(text.replace(/\n/g, " "));
  return found?.[1] && found[2] ? { level: found[1], elevation: found[2] } : null;
}

/** Which steel a line speaks of: spacing and a leading grade mean links. Only for lines that read as bars. */
export const steelField = (text: string): "links" | "mainBars" => (/@|^[trh]\s*\d+\s*-/i.test(text) ? "links" : "mainBars");

/** `L1-L3`, `GF to L1`, `L1-3`: the two ends, when both are levels to `isLevel`; otherwise null. */
export function splitLevelRun(text: string, isLevel: (name: string) => boolean): readonly [string, string] | null {
  if (isLevel(text)) return null;
  const plain = plainMarks(text).trim();
  const spaced = /^(.+?)\s*(?:\s(?:up\s)?to\s|\s-+\s|\u2192|->|~)\s*(.+)$/i.exec(plain);
  if (spaced?.[1] && spaced[2]) return [spaced[1], spaced[2]];
  for (let dash = plain.indexOf("-", 1); dash > 0; dash = plain.indexOf("-", dash + 1)) {
    const [from, end] = [plain.slice(0, dash).trim(), plain.slice(dash + 1).trim()];
    const to = /^\d+$/.test(end) ? from.replace(/\d+$/, "") + end : end;
    if (to !== "" && isLevel(from) && isLevel(to)) return [from, to];
  }
  return null;
}
