import type { ShortPreview } from "./shorten-preview.ts";

/** The whole preview in one row of figures. */
export function PreviewCounts({ preview: { create, change, sameCount, refused, reading, notInFile } }: { readonly preview: ShortPreview }) {
  const cells = [
    { label: "Columns created", count: create.columns.count },
    { label: "Columns changed", count: change.columns.count },
    { label: "As they are", count: sameCount },
    { label: "Refused", count: refused.length, isBad: refused.length > 0 },
    { label: "To look at", count: reading.warnings.length },
    { label: "Not in the file", count: notInFile.count },
  ];
  return (
    <dl className="grid grid-cols-2 gap-px border-2 border-ink bg-rule-soft sm:grid-cols-3 lg:grid-cols-6">
      {cells.map(({ label, count, isBad }) => (
        <div key={label} className="bg-sheet px-4 py-2">
          <dt className="lettering">{label}</dt>
          <dd className={`text-2xl font-semibold ${isBad ? "text-flag-deep" : ""}`}>{count}</dd>
        </div>
      ))}
    </dl>
  );
}
