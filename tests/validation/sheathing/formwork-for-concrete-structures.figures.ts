/**
 * Pressure tables reprinted from APA, Concrete Forming, 2004 (rounded to 5 psf), and the examples of chapter 5. The column headed 20 in. is 19.2 in.,
 * a panel of 8 ft in five. Printed lengths are truncated: shear 12.88 in. stands as 12.8.
 */
import { m } from "#lib/kernel/units.ts";
import { allowableSpans, spanActions, spanAtDeflection, spanCoefficients } from "#lib/trade/engineering/backing/span-coefficients.ts";
import { abs, figure, rel, type PublishedSource } from "#tests/support/figures/published-figures.ts";
import { inches, plf, poundInches, pounds, poundSquareInches, toInches } from "#tests/support/figures/us-customary.ts";
import { FORMWORK_FOR_CONCRETE_STRUCTURES } from "../sources.ts";
import { tablePressure, type ApaBoard } from "./apa-board.ts";

const across = (thickness: ApaBoard["thickness"]): ApaBoard => ({ thickness, grade: "class-i", grain: "across" });
const entry = (id: string, board: ApaBoard, centres: number, ratio: 270 | 360, expected: number): PublishedSource["cases"][number] => ({
  id, at: board.grade === "class-i" ? "Table 9-7, p. 231" : "Table 4-16, p. 66", what: `${board.thickness} in. ${board.grade}, face grain ${board.grain}, supports at ${centres} in., L/${ratio}`,
  figures: { pressure: figure(expected, "psf", rel(0.02), () => tablePressure(board, centres, ratio)) },
});

const bendingPressure = () => {
  const onePsf = spanActions({ coefficients: spanCoefficients(3), load: plf(1), span: m(24 * 0.0254), shearSpan: m(0.5), stiffness: poundSquareInches(1.65e6 * 0.199) });
  return poundInches(1930 * 0.455) / onePsf.moment;
};

const wall = { coefficients: spanCoefficients(3), load: plf(825), stiffness: poundSquareInches(1.8e6 * 0.278) };
const wallSpans = () => allowableSpans({ ...wall, momentCapacity: poundInches(2062 * 0.515), shearCapacity: pounds(66 * 8.05), ratio: 360, shearRelief: m(0) });

export const published: PublishedSource = {
  source: FORMWORK_FOR_CONCRETE_STRUCTURES,
  cases: [
    entry("CASE-B1", across("3/4"), 8, 360, 1580),
    entry("CASE-B2", across("3/4"), 12, 360, 730),
    entry("CASE-B3", across("3/4"), 16, 360, 370),
    entry("CASE-B4", across("3/4"), 16, 270, 410),
    entry("CASE-B5", across("3/4"), 19.2, 360, 225),
    entry("CASE-B6", across("3/4"), 24, 360, 120),
    entry("CASE-B7", across("5/8"), 12, 360, 575),
    entry("CASE-B8", across("1/2"), 16, 360, 175),
    entry("CASE-B9", across("23/32"), 12, 360, 695),
    entry("CASE-B12", { thickness: "3/4", grade: "structural-i", grain: "along" }, 12, 360, 545),
    {
      id: "CASE-B15", at: "Example 5-14, p. 121", what: "3/4 in. board on joists at 24 in., bending only: F_b 1930 psi, KS 0.455 in3",
      figures: {
        pressure: figure(183, "psf", abs(1), bendingPressure),
        ratio_to_175psf: figure(1.05, "", abs(0.005), () => bendingPressure() / 175),
      },
    },
    {
      // The book's summary quotes 16.0 in. for deflection although its own L/360 line gives 14.3; bending governs either way.
      id: "CASE-B16", at: "ch. 5, wall form example, p. 138", what: "board at 825 psf: F_b 2062, F_s 66 psi, E 1.8e6 psi, S 0.515 in3, Ib/Q 8.05 in2, I 0.278 in4",
      figures: {
        bending: figure(12.4, "in", abs(0.1), () => toInches(wallSpans().bending)),
        shear: figure(12.8, "in", abs(0.1), () => toInches(wallSpans().shear)),
        deflection_L360: figure(14.3, "in", abs(0.1), () => toInches(wallSpans().deflection)),
        deflection_1_16: figure(16.0, "in", abs(0.1), () => toInches(spanAtDeflection({ ...wall, deflection: m(inches(1 / 16) / 1000) }))),
      },
    },
  ],
};
