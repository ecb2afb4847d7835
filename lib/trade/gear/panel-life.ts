/** Integer minor units of one currency. */
export type PanelCosts = { readonly sheetCost: number; readonly labourCost: number; readonly sundryCost: number };
export const PANEL_EVENTS = ["damaged", "repaired", "turned", "cut down", "demoted", "scrapped", "withdrawn"] as const;
export type PanelEventKind = (typeof PANEL_EVENTS)[number];
/** `amount`: what a repair cost, or what the panel still brought when it was cut down or scrapped. */
export type PanelEvent = {
  readonly id: string; readonly kind: PanelEventKind; readonly at: string; readonly reason: string | null; readonly amount: number;
  /** What a withdrawal takes out. */
  readonly eventId: string | null;
};

export type PanelLife = {
  /** Times it came off a column. */
  readonly uses: number;
  /** Of the face that is now to the concrete. */
  readonly usesOfFace: number;
  readonly repairs: number;
  readonly turnedAt: string | null;
  readonly demoted: { readonly at: string; readonly reason: string | null } | null;
  /** Put aside until it is repaired. */
  readonly damaged: { readonly at: string; readonly reason: string | null } | null;
  readonly ended: { readonly kind: "cut down" | "scrapped"; readonly at: string; readonly reason: string | null } | null;
  readonly cost: number;
  /** Null before the first use. */
  readonly costPerUse: number | null;
  readonly withdrawn: ReadonlySet<string>;
};

/**
 * Purpose: where one panel stands in its life, from what befell it and the moments it came off columns.
 * Formula: cost per use = (sheet + making + fillet and nails + repairs - what it brought) / uses, half up to whole minor units.
 * Parameters: integer minor units of one currency; moments as ISO 8601 in UTC, in any order.
 * Result: integer minor units per use, or null before the first use.
 * Example: 3150 + 1800 + 250 + repairs 400 and 350 - 450 brought = 5500; over 7 uses 785.71, so 786.
 * Source: common practice, no source.
 */
export function panelLife(costs: PanelCosts, events: readonly PanelEvent[], strippedAt: readonly string[]): PanelLife {
  const withdrawn = new Set(events.flatMap(({ kind, eventId }) => (kind === "withdrawn" && eventId !== null ? [eventId] : [])));
  const standing = events.filter(({ id, kind }) => kind !== "withdrawn" && !withdrawn.has(id)).sort((left, right) => left.at.localeCompare(right.at) || left.id.localeCompare(right.id));
  const last = (kind: PanelEventKind): PanelEvent | undefined => standing.findLast((event) => event.kind === kind);
  const repairs = standing.filter(({ kind }) => kind === "repaired");
  const end = standing.findLast(({ kind }) => kind === "cut down" || kind === "scrapped");
  const turnedAt = last("turned")?.at ?? null;
  const demoted = last("demoted");
  const hurt = standing.findLast(({ kind }) => kind === "damaged" || kind === "repaired");
  const cost = costs.sheetCost + costs.labourCost + costs.sundryCost + repairs.reduce((sum, { amount }) => sum + amount, 0) - (end?.amount ?? 0);
  const uses = strippedAt.length;
  return {
    uses, usesOfFace: turnedAt === null ? uses : strippedAt.filter((at) => at > turnedAt).length, repairs: repairs.length, turnedAt,
    demoted: demoted ? { at: demoted.at, reason: demoted.reason } : null,
    damaged: hurt?.kind === "damaged" ? { at: hurt.at, reason: hurt.reason } : null,
    ended: end ? { kind: end.kind === "cut down" ? "cut down" : "scrapped", at: end.at, reason: end.reason } : null,
    cost, costPerUse: uses === 0 ? null : Math.floor((2 * cost + uses) / (2 * uses)), withdrawn,
  };
}

export type PanelFault =
  | { readonly code: "panel-ended"; readonly values: { readonly panel: string; readonly how: string } }
  | { readonly code: "panel-one-face" | "panel-turned-already" | "panel-demoted-already" | "panel-damaged-already"; readonly values: { readonly panel: string } }
  | { readonly code: "panel-cut-larger"; readonly values: { readonly panel: string; readonly size: string; readonly piece: string } };

/** What stands against an event in the life of a panel; nothing where null. */
export function objectionTo(kind: Exclude<PanelEventKind, "withdrawn">, panel: { readonly name: string; readonly filmFaces: number }, life: PanelLife): PanelFault | null {
  const values = { panel: panel.name };
  if (life.ended) return { code: "panel-ended", values: { ...values, how: life.ended.kind } };
  if (kind === "turned" && panel.filmFaces < 2) return { code: "panel-one-face", values };
  if (kind === "turned" && life.turnedAt !== null) return { code: "panel-turned-already", values };
  if (kind === "damaged" && life.damaged !== null) return { code: "panel-damaged-already", values };
  if (kind === "demoted" && life.demoted !== null) return { code: "panel-demoted-already", values };
  return null;
}

/** Overall, in millimetres. */
export type PanelSize = { readonly widthMm: number; readonly heightMm: number };
const sizeText = ({ widthMm, heightMm }: PanelSize): string => `${widthMm} × ${heightMm} mm`;
const fitsIn = (piece: PanelSize, whole: PanelSize): boolean => piece.widthMm <= whole.widthMm && piece.heightMm <= whole.heightMm;

/**
 * Nothing larger comes out of something smaller: one piece, or two beside or above each other with a saw cut between.
 * The height stays the height, since the backing and the grain of the film run with it.
 */
export function objectionToCut(panel: PanelSize & { readonly name: string }, pieces: readonly [PanelSize, ...PanelSize[]], kerfMm: number): PanelFault | null {
  const refused = (piece: PanelSize): PanelFault => ({ code: "panel-cut-larger", values: { panel: panel.name, size: sizeText(panel), piece: sizeText(piece) } });
  const [first, second] = pieces;
  const alone = pieces.find((piece) => !fitsIn(piece, panel) || (piece.widthMm === panel.widthMm && piece.heightMm === panel.heightMm));
  if (alone) return refused(alone);
  if (!second) return null;
  const beside = first.widthMm + kerfMm + second.widthMm <= panel.widthMm;
  const above = first.heightMm + kerfMm + second.heightMm <= panel.heightMm;
  return beside || above ? null : refused(second);
}

/** What a panel brought, shared among the pieces cut from it by their size; the largest remainder takes the odd cent. */
export function shareByArea(amount: number, pieces: readonly PanelSize[]): readonly number[] {
  const areas = pieces.map(({ widthMm, heightMm }) => widthMm * heightMm);
  const total = areas.reduce((sum, area) => sum + area, 0);
  const exact = areas.map((area) => (amount * area) / total);
  const shares = exact.map(Math.floor);
  const order = exact.map((value, index) => ({ index, rest: value - Math.floor(value) })).sort((left, right) => right.rest - left.rest || left.index - right.index);
  for (const { index } of order.slice(0, amount - shares.reduce((sum, share) => sum + share, 0))) shares[index] = (shares[index] ?? 0) + 1;
  return shares;
}
