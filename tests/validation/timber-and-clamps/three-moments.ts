/**
 * Moments over the supports by the equation of three moments (Clapeyron): M(i-1) L1 + 2 M(i) (L1 + L2) + M(i+1) L2 = -(S1 + S2), where a load P at x from
 * the far end of a span L puts P x (L2 - x2) / L into S. Straight lines of load are integrated in closed form; the system is solved by a package.
 */
import { Matrix, solve } from "ml-matrix";
import type { BeamInput } from "#lib/trade/engineering/backing/continuous-beam.ts";

/** Integral of the load times a polynomial of the place, coefficients from the constant up, between two places. */
function gathered(load: BeamInput["load"], from: number, to: number, weight: readonly number[]): number {
  let sum = 0;
  load.slice(1).forEach((b, index) => {
    const a = load[index];
    if (a === undefined || b.at <= from || a.at >= to || b.at <= a.at) return;
    const rise = (b.load - a.load) / (b.at - a.at);
    const [start, end] = [Math.max(a.at, from), Math.min(b.at, to)];
    // Places from `from`, so that high powers stay small.
    const level = a.load - rise * (a.at - from);
    weight.forEach((factor, power) => {
      const [s, e] = [start - from, end - from];
      sum += factor * (level * (e ** (power + 1) - s ** (power + 1)) / (power + 1) + (rise * (e ** (power + 2) - s ** (power + 2))) / (power + 2));
    });
  });
  return sum;
}

export type ThreeMoments = { readonly moments: readonly number[]; readonly reactions: readonly number[] };

export function threeMoments({ length, supports, load }: BeamInput): ThreeMoments {
  const count = supports.length;
  const at = (index: number): number => supports[index] ?? Number.NaN;
  const span = (index: number): number => at(index + 1) - at(index);
  const total = (from: number, to: number): number => gathered(load, from, to, [1]);
  const about = (from: number, to: number): number => gathered(load, from, to, [0, 1]);
  // Overhangs hang on their support: minus load times arm.
  const first = -(total(0, at(0)) * at(0) - about(0, at(0)));
  const last = -about(at(count - 1), length);
  const A = Matrix.eye(count, count);
  const right = Matrix.zeros(count, 1);
  right.set(0, 0, first);
  right.set(count - 1, 0, last);
  for (let index = 1; index < count - 1; index += 1) {
    const [l, r] = [span(index - 1), span(index)];
    A.set(index, index - 1, l);
    A.set(index, index, 2 * (l + r));
    A.set(index, index + 1, r);
    // Left: x (l2 - x2) / l; right, from its far end, x = r - s: (r - s)(2 r s - s2) / r = (2 r2 s - 3 r s2 + s3) / r.
    const fromLeft = gathered(load, at(index - 1), at(index), [0, l, 0, -1 / l]);
    const fromRight = gathered(load, at(index), at(index + 1), [0, 2 * r, -3, 1 / r]);
    right.set(index, 0, -(fromLeft + fromRight));
  }
  const moments = solve(A, right).to1DArray();
  const beside = (index: number): readonly [number, number] => {
    const [l, w] = [span(index), total(at(index), at(index + 1))];
    const start = ((moments[index + 1] ?? 0) - (moments[index] ?? 0) + w * l - about(at(index), at(index + 1))) / l;
    return [start, w - start];
  };
  const reactions = supports.map((_, index) => (index === 0 ? total(0, at(0)) : beside(index - 1)[1]) + (index === count - 1 ? total(at(index), length) : beside(index)[0]));
  return { moments, reactions };
}
