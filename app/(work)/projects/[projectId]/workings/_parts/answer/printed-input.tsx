import type { InputLine } from "../calculator.ts";

/** What was entered, on paper only: on a screen the entries themselves stand there. */
export function PrintedInput({ lines }: { readonly lines: readonly InputLine[] }) {
  return (
    <dl aria-label="Entries" className="printed-input hidden border border-ink print:block">
      {lines.map(([label, value]) => (
        <div key={label} className="flex justify-between gap-2 border-b border-rule-soft"><dt>{label}</dt><dd className="text-right font-semibold">{value}</dd></div>
      ))}
    </dl>
  );
}
