import type { Refusal } from "#lib/trade/engineering/working.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { givenText } from "#app/_ui/value/refusal-words.ts";

export type RefusalRowsProps = { readonly refusal: Refusal; readonly units: Units };

/** A limit that was not kept: what was given, what would be allowed, and who says so. */
export function RefusalRows({ refusal, units }: RefusalRowsProps) {
  const rows = [["Limit", refusal.limit], ["Given", givenText(refusal, units)], ["Allowed", refusal.allowed], ["Source", refusal.source]] as const;
  return (
    <dl className="mt-2 grid grid-cols-[max-content_1fr] gap-x-4 gap-y-1">
      {rows.map(([name, value]) => (
        <div key={name} className="contents"><dt className="text-ink-soft">{name}</dt><dd className="font-semibold">{value}</dd></div>
      ))}
    </dl>
  );
}
