import type { Check, FormSet } from "#lib/trade/shutter/form-set.ts";
import { groupBy } from "#lib/kernel/group-by.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { formulaText, percent, termText, toldAgain } from "#app/_ui/value/working-words.ts";

/** "Ply A-C: bending 81 %, shear 55 %, deflection 40 %". */
export function checkLines(checks: readonly Check[]): readonly string[] {
  return [...groupBy(checks, ({ element, faces }) => `${element} ${faces}`)].map(
    ([part, own]) => `${part}: ${own.map(({ what, utilisation }) => `${what} ${percent(utilisation)}`).join(", ")}`,
  );
}

/** The derivation on paper, in its key lines; formulas and sources that several steps share are told once. */
export function KeyLines({ formSet: { working, checks }, units }: { readonly formSet: FormSet; readonly units: Units }) {
  const sources = [...new Set(working.map(({ source }) => source))];
  return (
    <div className="key-lines hidden print:block">
      {[...groupBy(working, ({ formula }) => formula)].map(([formula, own]) => (
        <p key={formula}>
          {own.map(({ title, inputs, result, source }) => (
            <span key={title}>
              <strong>{title}</strong> ({sources.indexOf(source) + 1}): {inputs.map(termText).join("; ")}: <strong>{termText(result)}{toldAgain(result, units)}</strong>.{" "}
            </span>
          ))}
          {formulaText(formula)}.
        </p>
      ))}
      <p><strong>Used:</strong> {checkLines(checks).join(". ")}.</p>
      <p>Sources: {sources.map((source, index) => `(${index + 1}) ${source}`).join(". ")}.</p>
    </div>
  );
}
