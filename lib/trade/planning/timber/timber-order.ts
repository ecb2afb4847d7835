import { brokenRule, invalid, ok, type Problem, type Result } from "#lib/kernel/result.ts";

/** A length that can be had: new ones from the merchant (quantity null: as many as needed) or offcuts on the rack, which may have been trimmed before. */
export type TimberStock = { readonly id: string; readonly lengthMm: number; readonly quantity: number | null; readonly cost: number; readonly isTrimmed?: boolean };
export type TimberPart = { readonly id: string; readonly lengthMm: number; readonly quantity: number };

/**
 * What to cut. Between two parts one kerf is lost: n parts need their sum and n - 1 kerfs. `endTrimMm` comes off each
 * stock length once, of one trimmed before no more. An offcut of at least `keepFromMm` goes back to the rack.
 */
export type TimberOrder = {
  readonly kerfMm: number;
  readonly endTrimMm: number;
  readonly keepFromMm: number;
  readonly stock: readonly TimberStock[];
  readonly parts: readonly TimberPart[];
};

export type TimberCut = { readonly partId: string; readonly lengthMm: number };
/** `count` equal pieces of stock, cut the same way, first cut first. */
export type TimberLayout = { readonly stockId: string; readonly count: number; readonly cuts: readonly TimberCut[]; readonly offcutMm: number; readonly kept: boolean };

/** `bound`: no plan can cost less. `gap` is (cost - bound) / cost; `proven` when no cheaper plan exists. */
export type TimberPlan = {
  readonly layouts: readonly TimberLayout[];
  readonly cost: number;
  readonly bound: number;
  readonly gap: number;
  readonly proven: boolean;
  readonly wasteMm: number;
};

/** What of a length parts can be cut from, in millimetres. */
export const usableMm = ({ endTrimMm }: Pick<TimberOrder, "endTrimMm">, { lengthMm, isTrimmed = false }: TimberStock): number => lengthMm - (isTrimmed ? 0 : endTrimMm);

export function checkTimberOrder(order: TimberOrder): Result<TimberOrder> {
  const problems: Problem[] = [
    ...order.stock.flatMap((piece, row) => [
      ...wholeNumber(`stock.${row}.lengthMm`, piece.lengthMm, 1),
      ...wholeNumber(`stock.${row}.quantity`, piece.quantity ?? 0, 0),
      ...wholeNumber(`stock.${row}.cost`, piece.cost, 0),
    ]),
    ...order.parts.flatMap((part, row) => [...wholeNumber(`parts.${row}.lengthMm`, part.lengthMm, 1), ...wholeNumber(`parts.${row}.quantity`, part.quantity, 0)]),
    ...wholeNumber("kerfMm", order.kerfMm, 0),
    ...wholeNumber("endTrimMm", order.endTrimMm, 0),
    ...repeated("stock", order.stock),
    ...repeated("parts", order.parts),
  ];
  if (problems.length > 0) return invalid(...problems);
  const longest = Math.max(0, ...order.stock.filter((piece) => piece.quantity !== 0).map((piece) => usableMm(order, piece)));
  const tooLong = order.parts.find((part) => part.quantity > 0 && part.lengthMm > longest);
  return tooLong ? brokenRule("part-longer-than-stock", { part: tooLong.id, lengthMm: tooLong.lengthMm, longestMm: longest }) : ok(order);
}

function wholeNumber(field: string, value: number, least: number): Problem[] {
  return Number.isSafeInteger(value) && value >= least ? [] : [{ field, message: `Must be a whole number of at least ${least}.` }];
}

function repeated(field: string, rows: readonly { readonly id: string }[]): Problem[] {
  const seen = new Set<string>();
  return rows.flatMap(({ id }, row) => {
    if (seen.has(id)) return [{ field: `${field}.${row}.id`, message: `"${id}" is there twice.` }];
    seen.add(id);
    return [];
  });
}
