"use client";

import { useState } from "react";
import { useRouter } from "next/navigation";
import type { TimberUse } from "#lib/contracts/planning/cutting.ts";
import type { SheetLayout } from "#lib/trade/planning/sheets/sheet-order.ts";
import type { TimberLayout } from "#lib/trade/planning/timber/timber-order.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { Dialog } from "#app/_ui/control/dialog.tsx";
import { FieldForm } from "#app/_ui/field/field-form.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { textOf } from "#app/_ui/form/read-form.ts";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { paths } from "#app/paths.ts";
import { cutAsPlannedAction } from "../actions.ts";
import { counted, lengthsOf, offcutsOf } from "./cut-words.ts";

type Props = {
  readonly projectId: string; readonly levelId: string; readonly sets: readonly { readonly size: string; readonly count: number }[]; readonly layouts: readonly SheetLayout[];
  readonly timbers: readonly { readonly use: TimberUse; readonly layouts: readonly TimberLayout[] }[];
  /** Where a timber could not be planned, its lengths are not posted. */
  readonly isWithoutTimbers: boolean;
  readonly panels: number;
};

const sum = (counts: readonly { readonly count: number }[]): number => counts.reduce((all, { count }) => all + count, 0);

/** Said once sheets and timbers are cut: they leave the ledger, the panels and the offcuts kept come in. */
export function CutButton({ projectId, levelId, sets, layouts, timbers, isWithoutTimbers, panels }: Props) {
  const [isOpen, setOpen] = useState(false);
  const router = useRouter();
  const { submit, failure, isPending } = useAnswer(async (data) => {
    const answer = await cutAsPlannedAction({
      projectId, levelId, sets: [...sets], happenedAt: new Date().toISOString(), sheetBatch: textOf(data, "sheetBatch"),
      layouts: layouts.map((layout) => ({ ...layout, cuts: [...layout.cuts], parts: [...layout.parts], offcuts: [...layout.offcuts] })),
      timbers: timbers.map(({ use, layouts: own }) => ({ use, layouts: own.map((layout) => ({ ...layout, cuts: [...layout.cuts] })) })),
    });
    if (answer.ok) {
      setOpen(false);
      // What was cut is asked for no more, so the plan gives way to what came of it.
      const { panels: made, unknownSheets, keptOffcuts, timbers: told } = answer.value;
      const posted = Object.fromEntries(told.flatMap(({ use, lengths, unknown }) => [[use, lengths], [`${use}-unknown`, unknown]]));
      router.push(paths.cutting(projectId, { level: levelId, made: made.length, from: made[0]?.name, to: made.at(-1)?.name, unknown: unknownSheets, ply: keptOffcuts, timber: told.reduce((all, { kept }) => all + kept, 0), ...posted }));
    }
    return answer;
  });
  const sheets = layouts.some(({ sheetId }) => sheetId.startsWith("o")) ? counted(sum(layouts), "sheet or offcut", "sheets and offcuts") : counted(sum(layouts), "sheet");
  const lengths = lengthsOf(timbers.map(({ use, layouts: own }) => ({ use, count: sum(own) })));
  const ply = layouts.reduce((all, { count, offcuts }) => all + count * offcuts.filter(({ kept }) => kept).length, 0);
  const offcuts = offcutsOf(ply, sum(timbers.flatMap(({ layouts: own }) => own.filter(({ kept }) => kept))));
  return (
    <div className="no-print">
      <Button size="glove" onPress={() => setOpen(true)}>Cut as planned</Button>
      <Dialog title="Cut as planned" isOpen={isOpen} onOpenChange={setOpen}>
        <FieldForm action={submit} {...(failure ? { failure } : {})}>
          <p>Out of the stock, as cut up: {sheets} of ply{lengths === "" ? "" : `, ${lengths}`}; backing, cleats and fillets go with their panels.</p>
          <p>On to the rack: {counted(panels, "panel")}, each with its share of the ply{offcuts === "" ? "" : `, and ${offcuts} worth keeping, which the next plan takes first`}.</p>
          {isWithoutTimbers ? <p>A timber without a plan is not posted: take its lengths out under Orders, Cut up.</p> : null}
          <TextField name="sheetBatch" label="Batch of the sheets" hint="As stamped on the pack; goes with every panel" maxLength={80} size="glove" />
          <div className="flex justify-end"><Button type="submit" kind="primary" size="glove" isPending={isPending}>They are cut</Button></div>
        </FieldForm>
      </Dialog>
    </div>
  );
}
