import type { ClampLayoutTold } from "#lib/contracts/workings/clamp-layout.ts";
import { DataTable, type DataColumn } from "#app/_ui/page/data-table.tsx";
import { quantityText, type Units } from "#app/_ui/value/format-quantity.ts";
import { remedyOf } from "#app/_ui/value/refusal-words.ts";

type Rate = ClampLayoutTold["rise_rates"][number];

function rateWords({ rise_rate_m_per_h, any_rate, refusal }: Rate, units: Units): string {
  if (refusal !== null) return `no answer: ${refusal.limit}, allowed ${refusal.allowed}. ${remedyOf(refusal)}`;
  if (any_rate) return "any: the full liquid head is carried";
  return rise_rate_m_per_h === null ? "none: the layout does not hold at any rate" : `up to ${quantityText(rise_rate_m_per_h, "m/h", units, 2)}`;
}

/** How fast the concrete may rise with these clamps, by its temperature. */
export function RiseRates({ rates, units }: { readonly rates: readonly Rate[]; readonly units: Units }) {
  if (rates.length === 0) return null;
  const columns: readonly DataColumn<Rate>[] = [
    { key: "temperature", head: "Concrete", isRowHead: true, cell: ({ temperature_degC }) => quantityText(temperature_degC, "degC", units) },
    { key: "rate", head: "May rise", cell: (rate) => rateWords(rate, units) },
  ];
  return <DataTable caption="Highest rate of rise at which it holds" columns={columns} rows={rates} rowKey={({ temperature_degC }) => String(temperature_degC)} />;
}
