/** An exact number; the denominator is positive. Fractions of a week or a month stay whole until a line of money is rounded. */
export type Fraction = { readonly n: bigint; readonly d: bigint };

const gcd = (a: bigint, b: bigint): bigint => (b === 0n ? (a < 0n ? -a : a) : gcd(b, a % b));

export function fraction(numerator: number | bigint, denominator: number | bigint = 1): Fraction {
  const [n, d] = [BigInt(numerator), BigInt(denominator)];
  if (d <= 0n) throw new RangeError("A fraction needs a positive denominator.");
  const common = d === 1n ? 1n : gcd(n, d) || 1n;
  return { n: n / common, d: d / common };
}

export const NONE: Fraction = { n: 0n, d: 1n };
export const plus = (a: Fraction, b: Fraction): Fraction => (a.d === b.d ? fraction(a.n + b.n, a.d) : fraction(a.n * b.d + b.n * a.d, a.d * b.d));
export const minus = (a: Fraction, b: Fraction): Fraction => plus(a, { n: -b.n, d: b.d });
export const times = (a: Fraction, b: Fraction): Fraction => fraction(a.n * b.n, a.d * b.d);
export const isNone = ({ n }: Fraction): boolean => n === 0n;
export const isLess = (a: Fraction, b: Fraction): boolean => a.n * b.d < b.n * a.d;

/** To the nearest whole number, halves away from zero, as money is rounded on an invoice. */
export function roundHalfUp({ n, d }: Fraction): number {
  const size = n < 0n ? -n : n;
  const whole = Number((2n * size + d) / (2n * d));
  if (!Number.isSafeInteger(whole)) throw new RangeError("The amount is too large to be money.");
  return n < 0n ? -whole : whole;
}
