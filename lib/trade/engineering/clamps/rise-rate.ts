import { kPa, m, m_per_h } from "#lib/kernel/units.ts";
import type { DegreesCelsius, Kilopascals, MetresPerHour } from "#lib/kernel/units.ts";
import type { FormSize, PressureConditions, PressureEnvelope } from "../pour-conditions.ts";
import { pressureEnvelope } from "../pressure-envelope.ts";
import type { Refusal } from "../working.ts";

export type RiseRateLine = {
  readonly temperature: DegreesCelsius;
  /** Rounded down to 0.01 m/h; null where the method is refused, where no rate passes, or where the rate is not the limit. */
  readonly riseRate: MetresPerHour | null;
  /** The layout passes even under the full liquid head. */
  readonly anyRate: boolean;
  readonly refusal: Refusal | null;
};

const STEPS = 160;
const HALVINGS = 50;
const SLOWEST = 0.01;
const FASTEST = 60;

const withLimit = (envelope: PressureEnvelope, head: number, limit: number): PressureEnvelope => {
  const liquidDepth = m((envelope.pourHeight * limit) / head);
  const corners = [{ depth: m(0), pressure: kPa(0) }, { depth: liquidDepth, pressure: kPa(limit) }];
  const points = liquidDepth < envelope.pourHeight ? [...corners, { depth: envelope.pourHeight, pressure: kPa(limit) }] : corners;
  return { ...envelope, limit: kPa(limit), liquidDepth, points };
};

/**
 * Largest limiting pressure under which a layout still passes, as it does under every smaller one.
 *
 * Formula: the largest L with use(l) <= 1 for all l up to L, l the limit of min(w z, l): steps of 1/160 of the head, then halving.
 * Parameters: envelope, for density and pour height; use [-] of the layout under an envelope.
 * Result: L [kPa]; the head where that passes too.
 * Limits: the use of a continuous beam need not rise with every load, so the steps go up from the lowest and stop at the first that fails: what is
 *   halved is the running maximum, which cannot fall. A failure that lies wholly between two steps is not seen; a step is under 1 kPa for heads up to 160 kPa.
 * Example: a clamp that may take 30 kN/m on a form with one gap of even load 0.6 m: 50 kPa.
 * Source: bisection of the running maximum; elastic beam theory for the use.
 */
export function highestLimit(envelope: PressureEnvelope, density: number, use: (envelope: PressureEnvelope) => number): Kilopascals {
  const head = density * envelope.pourHeight;
  const passes = (limit: number) => use(withLimit(envelope, head, limit)) <= 1;
  let good = 0;
  for (let step = 1; step <= STEPS; step += 1) {
    const limit = (head * step) / STEPS;
    if (passes(limit)) {
      good = limit;
      continue;
    }
    let bad = limit;
    for (let halving = 0; halving < 30; halving += 1) {
      const middle = (good + bad) / 2;
      if (passes(middle)) good = middle;
      else bad = middle;
    }
    break;
  }
  return kPa(good);
}

/**
 * Highest rise rate at which the pressure stays within a limit, for one concrete temperature.
 *
 * Formula: the largest R with p(R) <= L, by halving between 0.01 and 60 m/h.
 * Parameters: pour, its rise rate not read; form; temperature [degC]; limit L [kPa]; head [kPa].
 * Result: R [m/h], rounded down to 0.01, beside the temperature [degC] it holds for.
 * Limits: a refusal of the method at the lowest rate is handed on; one at a higher rate counts as over the limit. Why p never falls with R, so that
 *   halving is exact: ACI 347 and DIN 18218 are straight lines rising with R between a minimum and the head, and each of ACI's branches begins at or
 *   over the value the last one ended with. CIRIA 108, y = C1 sqrt(R), f = y + k sqrt(H - y): f falls only where H - y < k^2 / 4, and there f >= H,
 *   since k sqrt(e) >= e for e <= k^2; so min(f, h) is the head h there and cannot fall.
 * Example: ACI 347 SI, w = 23.5 kN/m3, C_c = 1.2, 17 degC, L = 70.90 kPa: 2.3 m/h (the example of `aciColumnPressureSi` read backwards).
 * Source: bisection of a monotone function; ACI 347-04, CIRIA Report 108 (1985) and DIN 18218:2010-01 as of their formulas.
 */
export function highestRiseRate(pour: PressureConditions, form: FormSize, temperature: DegreesCelsius, limit: Kilopascals, head: Kilopascals): RiseRateLine {
  const line = { temperature, riseRate: null, anyRate: false, refusal: null };
  const at = (riseRate: number) => pressureEnvelope({ ...pour, temperature, riseRate: m_per_h(riseRate) }, form);
  const slowest = at(SLOWEST);
  if (!slowest.ok) return { ...line, refusal: slowest.failure };
  if (limit >= head * (1 - 1e-9)) return { ...line, anyRate: true };
  const within = (riseRate: number) => {
    const answer = at(riseRate);
    return answer.ok && answer.value.limit <= limit * (1 + 1e-12);
  };
  if (!within(SLOWEST)) return line;
  let [low, high] = [SLOWEST, FASTEST];
  for (let halving = 0; halving < HALVINGS && !within(FASTEST); halving += 1) {
    const middle = (low + high) / 2;
    if (within(middle)) low = middle;
    else high = middle;
  }
  return { ...line, riseRate: m_per_h(Math.floor((within(FASTEST) ? FASTEST : low) * 100 + 1e-6) / 100) };
}
