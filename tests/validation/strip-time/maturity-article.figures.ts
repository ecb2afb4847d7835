/** The article goes on with the customary 19 800 degC.h for 28 days at 18 degC; the product of its own figures is 19 488. */
import { degC } from "#lib/kernel/units.ts";
import { stripTimeWorking } from "#lib/trade/engineering/workings/strip-time.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";
import { abs, figure, type PublishedSource } from "#tests/support/figures/published-figures.ts";

const gathered = (days: number, temperature: number, datum: number): number => {
  const hourly = Array.from({ length: days * 24 }, () => degC(temperature));
  const { progress } = valueOf(stripTimeWorking({ rule: { kind: "maturity", datum: degC(datum), required: 1 }, hourly, measured: "concrete" }));
  return progress.at(-1) ?? Number.NaN;
};

export const published: PublishedSource = {
  source: "Article on the maturity of concrete after Indian textbook practice, undated (civilmint.com/maturity-of-concrete)",
  cases: [
    {
      id: "CASE-D1", at: "reference maturity", what: "28 days at 18 degC, datum -11 degC, read hour by hour",
      figures: { maturity: figure(19_488, "degC.h", abs(0), () => gathered(28, 18, -11)) },
    },
  ],
};
