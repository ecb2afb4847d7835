export type CountLine = { readonly counted: number; readonly expected: number; /** Integer minor units for one piece lost. */ readonly lossPrice: number | null };

/** Over zero: more lies there than the ledger says. Under zero: pieces are missing. */
export const differenceOf = ({ counted, expected }: Pick<CountLine, "counted" | "expected">): number => counted - expected;

/**
 * What the missing pieces cost at their price when lost; pieces found do not pay for others.
 * Example: 40 expected, 37 counted, 12.50 each: 3 x 12.50 = 37.50. Null where pieces are missing and no price is known.
 */
export function lossOf(line: CountLine): number | null {
  const missing = Math.max(-differenceOf(line), 0);
  return missing === 0 ? 0 : line.lossPrice === null ? null : missing * line.lossPrice;
}

/** The whole loss of a count, and how many lines have no price to be counted with. */
export function totalLoss(lines: readonly CountLine[]): { readonly loss: number; readonly withoutPrice: number } {
  const losses = lines.map(lossOf);
  return { loss: losses.reduce<number>((sum, loss) => sum + (loss ?? 0), 0), withoutPrice: losses.filter((loss) => loss === null).length };
}
