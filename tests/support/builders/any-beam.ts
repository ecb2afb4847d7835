import fc from "fast-check";
import { kN_per_m, m } from "#lib/kernel/units.ts";
import type { BeamInput } from "#lib/trade/engineering/backing/continuous-beam.ts";
import { kN_m2 } from "#lib/trade/engineering/engineering-units.ts";

/** Any supports from two to ten, with or without free ends, and any straight-line load, the corners in order. */
export const anyBeam: fc.Arbitrary<BeamInput> = fc
  .record({
    gaps: fc.array(fc.double({ min: 0.1, max: 2, noNaN: true }), { minLength: 1, maxLength: 9 }),
    ends: fc.tuple(fc.double({ min: 0, max: 0.6, noNaN: true }), fc.double({ min: 0, max: 0.6, noNaN: true })),
    load: fc.array(fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 90, noNaN: true })), { minLength: 2, maxLength: 5 }),
  })
  .map(({ gaps, ends, load }) => {
    const supports = [ends[0]];
    for (const gap of gaps) supports.push((supports[supports.length - 1] ?? 0) + gap);
    const length = (supports[supports.length - 1] ?? 0) + ends[1];
    const corners = [...load].sort((a, b) => a[0] - b[0]).map(([at, value]) => ({ at: m(at * length), load: kN_per_m(value) }));
    return { length: m(length), supports: supports.map(m), load: corners, stiffness: kN_m2(3.7) };
  });

/** The same with every place on a whole millimetre, as they come from a drawing. */
export const anyDrawnBeam: fc.Arbitrary<BeamInput> = anyBeam.map((beam) => {
  const drawn = (place: number) => m(Math.round(place * 1000) / 1000);
  return { ...beam, length: drawn(beam.length), supports: beam.supports.map(drawn), load: beam.load.map((corner) => ({ at: drawn(corner.at), load: corner.load })) };
});
