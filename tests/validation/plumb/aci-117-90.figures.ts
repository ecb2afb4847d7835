/** The line of the table for sides over 12 in. is cut off in the reprint: ours refuses there. */
import { mm } from "#lib/kernel/units.ts";
import { MM_PER_FOOT, MM_PER_INCH } from "#lib/kernel/us-units.ts";
import { plumbTolerance, sectionTolerance, type PlumbToleranceRule } from "#lib/trade/engineering/plumb/plumb-tolerance.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";
import { abs, figure, type PublishedSource } from "#tests/support/figures/published-figures.ts";

const lean = (rule: PlumbToleranceRule, feet: number) => (): number => valueOf(plumbTolerance({ kind: "rule", rule }, mm(feet * MM_PER_FOOT))) / MM_PER_INCH;
const side = (inches: number) => valueOf(sectionTolerance("aci-117-90", mm(inches * MM_PER_INCH)));

export const published: PublishedSource = {
  source: "ACI 117-90 section 4, as reprinted in a US guide specification, 03700 (ufgscriteriadocreport.tpub.com/03700/037000026.htm)",
  cases: [
    { id: "CASE-E1", at: "p. 26, plumb of lines, surfaces and arrises", what: "40 ft high", figures: { deviation: figure(1, "in", abs(0), lean("aci-117-90", 40)) } },
    { id: "CASE-E2", at: "p. 26, exposed outside corner of a corner column", what: "40 ft high", figures: { deviation: figure(0.5, "in", abs(0), lean("aci-117-90-exposed-corner", 40)) } },
    {
      id: "CASE-E3", at: "p. 26, cross-section up to 12 in.", what: "a side of 12 in.",
      figures: { plus: figure(0.375, "in", abs(0), () => side(12).plus / MM_PER_INCH), minus: figure(0.25, "in", abs(0), () => side(12).minus / MM_PER_INCH) },
    },
  ],
};
