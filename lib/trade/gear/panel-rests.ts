import type { PanelLife, PanelSize } from "./panel-life.ts";

/** Sheets of one thickness differ by this much, new to worn. Common practice, no source. */
export const SAME_PLY_MM = 1;

/** How it is sawn, and what is worth keeping: at least `longMm` one way and `shortMm` the other. `sheet` is as large as sheets come. Millimetres. */
export type RestRule = { readonly kerfMm: number; readonly longMm: number; readonly shortMm: number; readonly sheet: PanelSize };

const areaOf = ({ widthMm, heightMm }: PanelSize): number => widthMm * heightMm;
const isSame = (a: PanelSize, b: PanelSize): boolean => a.widthMm === b.widthMm && a.heightMm === b.heightMm;
const isWorth = ({ widthMm, heightMm }: PanelSize, { longMm, shortMm }: RestRule): boolean => Math.max(widthMm, heightMm) >= longMm && Math.min(widthMm, heightMm) >= shortMm;
/** Whole millimetres, never larger than the rest is. */
const whole = ({ widthMm, heightMm }: PanelSize): PanelSize => ({ widthMm: Math.floor(widthMm + 1e-6), heightMm: Math.floor(heightMm + 1e-6) });

/**
 * What is left of a panel worth keeping when one piece or two are cut from it, the largest first. Every cut runs from edge
 * to edge of what lies on the saw and takes a kerf, so beside one piece there are two rests, cut in one order or the other;
 * of all orders the one counts that leaves the largest rests (the greatest sum of squared areas: one large rest is worth
 * more than two small). The height stays the height, as the grain runs. Empty where the pieces do not come out of it.
 */
export function panelRests(panel: PanelSize, pieces: readonly PanelSize[], rule: RestRule): readonly PanelSize[] {
  const ways = restWays(panel, pieces, rule.kerfMm).map((rests) => rests.map(whole).filter((rest) => isWorth(rest, rule)));
  const worth = (rests: readonly PanelSize[]): number => rests.reduce((sum, rest) => sum + areaOf(rest) ** 2, 0);
  const best = ways.reduce<readonly PanelSize[]>((kept, rests) => (worth(rests) > worth(kept) ? rests : kept), []);
  return [...best].sort((a, b) => areaOf(b) - areaOf(a));
}

/** The rests of every order of cuts that yields the pieces. */
function restWays(sheet: PanelSize, pieces: readonly PanelSize[], kerfMm: number): readonly (readonly PanelSize[])[] {
  const [first, ...others] = pieces;
  if (!first) return [[sheet]];
  if (others.length === 0 && isSame(first, sheet)) return [[]];
  return (["widthMm", "heightMm"] as const).flatMap((way) => near(pieces).flatMap((own) => {
    const rest = pieces.filter((piece) => !own.includes(piece));
    const sizes = own.map((piece) => piece[way]);
    const cuts = new Set([Math.max(...sizes), sizes.reduce((sum, size) => sum + size + kerfMm, -kerfMm)]);
    return [...cuts].flatMap((cut) => {
      const far = sheet[way] - cut - kerfMm;
      if (cut >= sheet[way] || (rest.length > 0 && far <= 0)) return [];
      const beyond = far > 0 ? restWays({ ...sheet, [way]: far }, rest, kerfMm) : [[]];
      return restWays({ ...sheet, [way]: cut }, own, kerfMm).flatMap((left) => beyond.map((right) => [...left, ...right]));
    });
  }));
}

/** Which of the pieces lie this side of a cut. */
const near = (pieces: readonly PanelSize[]): readonly (readonly PanelSize[])[] => [...pieces.map((piece) => [piece]), ...(pieces.length > 1 ? [pieces] : [])];

/** What is kept of it serves like a new sheet: nothing is broken or worn, and both its faces have film. */
export const isSound = ({ filmFaces }: { readonly filmFaces: number }, { damaged, demoted, turnedAt }: PanelLife): boolean => filmFaces > 1 && damaged === null && demoted === null && turnedAt === null;

/** Why what is left of a panel is not kept unasked: its film, or a joint of two sheets that may run through it. */
export type RestDoubt = "film" | "joint";

/** A panel higher or wider than a sheet was made of several; where their joint lies in what is left is not known here. */
export const restDoubt = (isPanelSound: boolean, { widthMm, heightMm }: PanelSize, { sheet }: RestRule): RestDoubt | null =>
  !isPanelSound ? "film" : heightMm > sheet.heightMm || widthMm > sheet.widthMm ? "joint" : null;

/** The first of these that is no rest of the cut; null where all of them are, each once. */
export function strangeRest(asked: readonly PanelSize[], rests: readonly PanelSize[]): PanelSize | null {
  const left = [...rests];
  for (const each of asked) {
    const at = left.findIndex((rest) => isSame(rest, each));
    if (at < 0) return each;
    left.splice(at, 1);
  }
  return null;
}
