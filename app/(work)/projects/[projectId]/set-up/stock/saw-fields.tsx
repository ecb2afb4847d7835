import { CheckField } from "#app/_ui/field/check-field.tsx";
import { LengthField } from "#app/_ui/field/length-field.tsx";
import { NumberField } from "#app/_ui/field/number-field.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { isTicked, numberOf, textOf } from "#app/_ui/form/read-form.ts";
import { Section } from "#app/_ui/page/section.tsx";
import type { CuttingRule } from "#lib/contracts/planning/cutting.ts";
import { amountFigure, readAmount } from "#lib/kernel/money.ts";
import { FieldGrid } from "../_parts/field-grid.tsx";
import type { Edge } from "./stock-row.ts";

const NAME = "cuttingRule.";

export function SawFields({ rule, edge: { units, currency } }: { readonly rule: CuttingRule; readonly edge: Edge }) {
  return (
    <Section title="The saw, the rack and the panels">
      <div className="flex flex-col gap-4">
        <FieldGrid>
          <LengthField name={`${NAME}kerfMm`} label="Kerf" units={units} hint="Lost at every cut" defaultValueMm={rule.kerfMm} isRequired />
          <LengthField name={`${NAME}trimMm`} label="Trim of each edge" units={units} hint="0 where the factory edge is used" defaultValueMm={rule.trimMm} isRequired />
          <LengthField name={`${NAME}endTrimMm`} label="Trim of a timber" units={units} hint="Off each length, once" defaultValueMm={rule.endTrimMm} isRequired />
          <LengthField name={`${NAME}keepTimberMm`} label="Keep timber from" units={units} hint="Shorter ends are waste" defaultValueMm={rule.keepTimberMm} isRequired />
          <LengthField name={`${NAME}keepLongMm`} label="Keep ply from, long side" units={units} defaultValueMm={rule.keepLongMm} isRequired />
          <LengthField name={`${NAME}keepShortMm`} label="Keep ply from, short side" units={units} defaultValueMm={rule.keepShortMm} isRequired />
        </FieldGrid>
        <FieldGrid>
          <NumberField name={`${NAME}panelUses`} label="Pours of a film face" hint="Before a panel is spent" defaultValue={rule.panelUses} minValue={1} maxValue={200} step={1} places={0} isRequired />
          <TextField name={`${NAME}recutEach`} label={`Cutting a panel down (${currency})`} hint="Work, without the ply lost" defaultValue={amountFigure(rule.recutEach, currency)} inputMode="decimal" isRequired />
          <TextField name={`${NAME}carryEach`} label={`Carrying a panel from the yard (${currency})`} defaultValue={amountFigure(rule.carryEach, currency)} inputMode="decimal" isRequired />
        </FieldGrid>
        <CheckField
          name={`${NAME}mayTurn`} label="Pieces may be turned on the sheet" defaultSelected={rule.mayTurn}
          hint="Leave it off where the ply's values hold in one direction only: a panel then stands with the sheet's length upright"
        />
        <TextField name={`${NAME}source`} label="Source of the prices" hint="Supplier, price list, date" defaultValue={rule.source} maxLength={200} isRequired />
      </div>
    </Section>
  );
}

/** The entries of these fields as the contract wants them. */
export const readSaw = (data: FormData, { currency }: Edge) => ({
  panelUses: numberOf(data, `${NAME}panelUses`),
  recutEach: readAmount(textOf(data, `${NAME}recutEach`), currency) ?? Number.NaN,
  carryEach: readAmount(textOf(data, `${NAME}carryEach`), currency) ?? Number.NaN,
  kerfMm: numberOf(data, `${NAME}kerfMm`),
  trimMm: numberOf(data, `${NAME}trimMm`),
  mayTurn: isTicked(data, `${NAME}mayTurn`),
  keepLongMm: numberOf(data, `${NAME}keepLongMm`),
  keepShortMm: numberOf(data, `${NAME}keepShortMm`),
  endTrimMm: numberOf(data, `${NAME}endTrimMm`),
  keepTimberMm: numberOf(data, `${NAME}keepTimberMm`),
  source: textOf(data, `${NAME}source`),
});
