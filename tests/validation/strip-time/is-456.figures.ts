import { degC, hours, N_per_mm2 } from "#lib/kernel/units.ts";
import { strengthOnRelease } from "#lib/trade/engineering/strip-time/strip-rules.ts";
import { stripTimeWorking } from "#lib/trade/engineering/workings/strip-time.ts";
import { abs, figure, type PublishedSource } from "#tests/support/figures/published-figures.ts";
import { IS_456 } from "../sources.ts";

/** Every time that is answered for some hours an engineer may ask for under the rule, on a mild day. */
const answered = (): readonly number[] =>
  Array.from({ length: 60 }, (_, asked) => stripTimeWorking({ rule: { kind: "is-456", hours: hours(asked) }, hourly: Array.from({ length: 72 }, () => degC(19)), measured: "air" }))
    .flatMap((answer) => (answer.ok ? [answer.value.earliest] : []));

export const published: PublishedSource = {
  source: IS_456,
  cases: [
    {
      id: "CASE-D2", at: "cl. 11.3.1, vertical faces of columns and walls", what: "ordinary Portland cement: the shortest and the longest time the rule gives",
      figures: { minimum: figure([16, 24], "h", abs(0), () => [Math.min(...answered()), Math.max(...answered())]) },
    },
    {
      id: "CASE-D4", at: "cl. 11.3, twice the stress on release", what: "1.0 N/mm2 when the form is taken away, no other least strength",
      figures: { required_strength: figure(2, "N/mm2", abs(0), () => strengthOnRelease(N_per_mm2(1), N_per_mm2(0))) },
    },
  ],
};
