import { asClampKind, asPourConditions, asShutterRule } from "#lib/contracts/shutter.ts";
import { kPa, m, mm, toMetres, type Kilopascals, type Millimetres } from "#lib/kernel/units.ts";
import { widestTimberShare } from "#lib/trade/engineering/backing/timber-capacity.ts";
import { outsideBacking, plyInterval, timberCentres } from "#lib/trade/shutter/face-geometry.ts";
import { designShutter } from "#lib/trade/shutter/design-shutter.ts";
import type { FormSet } from "#lib/trade/shutter/form-set.ts";
import type { ClampKind, ShutterRule } from "#lib/trade/shutter/shutter-rule.ts";
import type { readRules } from "../projects/project-head.ts";

export type Rules = ReturnType<typeof readRules>;
type Level = { readonly elevationMm: number; readonly slabDepthMm: number };
type Mark = { readonly shape: string; readonly widthMm: number; readonly depthMm: number };
/** The column that was asked for, in place of a usual one. */
export type OwnSize = { readonly widthMm: number; readonly depthMm: number; readonly heightMm: number };
type Lists = { readonly levels: readonly Level[]; readonly marks: readonly Mark[]; readonly isUs: boolean };

/** The column that the calculators start from, and what the project's rules make of it. */
export type SampleColumn = {
  readonly width: Millimetres; readonly depth: Millimetres; readonly height: Millimetres;
  /** Over the backing timbers, where the wedges stand. */
  readonly outside: { readonly width: Millimetres; readonly depth: Millimetres };
  /** Of the face, that the hardest-worked backing timber carries. */
  readonly share: Millimetres;
  readonly centres: Millimetres; readonly spans: 1 | 2 | 3;
  readonly clamp: ClampKind | null;
  readonly heights: readonly Millimetres[];
  /** Pressure at the foot; the liquid head where the project's rules give no form set. */
  readonly pressure: Kilopascals;
};

/** First storey less the slab over it and the kicker, or a usual height where there are no levels yet. */
function heightOf({ levels, isUs }: Lists, kicker: number): number {
  const [foot, head] = levels;
  const height = foot && head ? head.elevationMm - foot.elevationMm - head.slabDepthMm - kicker : 0;
  return height >= 1000 && height <= 12_000 ? height : isUs ? 3048 : 3000;
}

const sideOf = ({ marks, isUs }: Lists): Mark =>
  marks.find(({ shape }) => shape === "rectangle") ?? { shape: "rectangle", ...(isUs ? { widthMm: 457.2, depthMm: 457.2 } : { widthMm: 450, depthMm: 450 }) };

/** Every 400 mm, where the project's own rules give no layout to start from. */
const evenHeights = (height: number): readonly Millimetres[] =>
  Array.from({ length: Math.max(2, Math.floor((height - 300) / 400) + 1) }, (_, index) => mm(150 + 400 * index)).filter((at) => at < height);

function shareOf(formSet: FormSet, rule: ShutterRule): Millimetres {
  const shares = formSet.panels.filter(({ face }) => face === "A" || face === "B").flatMap(({ face, side, timberCount }) => {
    const share = widestTimberShare(timberCentres(plyInterval(formSet.section, rule, face), rule, timberCount).map((at) => m(at / 1000)), toMetres(side));
    return share.ok ? [share.value * 1000] : [];
  });
  return mm(Math.round(Math.max(...shares)));
}

/** A column of the project's own size and height, or the one asked for, boxed by the project's rules. */
export function sampleColumn(rules: Rules, lists: Lists, clampKinds: readonly Parameters<typeof asClampKind>[0][], own: OwnSize | null): SampleColumn {
  const rule = asShutterRule(rules.shutterRule);
  const { widthMm, depthMm } = own ?? sideOf(lists);
  const section = { width: mm(widthMm), depth: mm(depthMm) };
  const height = mm(own?.heightMm ?? heightOf(lists, rule.kickerHeight));
  const kinds = clampKinds.map(asClampKind);
  const designed = designShutter({ section: { shape: "rectangular", ...section }, formHeight: height, rule, pour: asPourConditions(rules.pourConditions), clampKinds: kinds });
  const rest = { ...section, height, outside: outsideBacking(section, rule) };
  const panel = designed.ok ? designed.value.panels.reduce((a, b) => (b.timberCentres > a.timberCentres ? b : a)) : null;
  if (!designed.ok || panel === null)
    return { ...rest, share: rule.largestTimberCentres, centres: rule.largestTimberCentres, spans: 2, clamp: kinds[0] ?? null, heights: evenHeights(height), pressure: kPa((rules.pourConditions.concreteDensity * height) / 1000) };
  const spans = Math.min(3, panel.timberCount - 1) as 1 | 2 | 3;
  return { ...rest, share: shareOf(designed.value, rule), centres: mm(Math.round(panel.timberCentres)), spans, clamp: designed.value.clamps.kind, heights: designed.value.clamps.heights, pressure: designed.value.pressure.limit };
}
