"use client";

import { useState } from "react";
import { useRouter } from "next/navigation";
import type { SheetLayout } from "#lib/trade/planning/sheets/sheet-order.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { Dialog } from "#app/_ui/control/dialog.tsx";
import { FieldForm } from "#app/_ui/field/field-form.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { textOf } from "#app/_ui/form/read-form.ts";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { paths } from "#app/paths.ts";
import { cutAsPlannedAction } from "../actions.ts";

type Props = {
  readonly projectId: string; readonly levelId: string; readonly sets: readonly { readonly size: string; readonly count: number }[]; readonly layouts: readonly SheetLayout[];
  readonly panels: number; readonly keptOffcuts: number;
};

/** Said once the sheets are cut: they leave the ledger, the panels and the offcuts kept come in. */
export function CutButton({ projectId, levelId, sets, layouts, panels, keptOffcuts }: Props) {
  const [isOpen, setOpen] = useState(false);
  const router = useRouter();
  const { submit, failure, isPending } = useAnswer(async (data) => {
    const answer = await cutAsPlannedAction({ projectId, levelId, sets: [...sets], layouts: layouts.map((layout) => ({ ...layout, cuts: [...layout.cuts], parts: [...layout.parts], offcuts: [...layout.offcuts] })), happenedAt: new Date().toISOString(), sheetBatch: textOf(data, "sheetBatch") });
    if (answer.ok) {
      setOpen(false);
      // What was cut is asked for no more, so the plan gives way to what came of it.
      const { panels: made, unknownSheets } = answer.value;
      router.push(paths.cutting(projectId, { level: levelId, made: made.length, from: made[0]?.name, to: made.at(-1)?.name, unknown: unknownSheets }));
    }
    return answer;
  });
  const count = layouts.reduce((sum, layout) => sum + layout.count, 0);
  return (
    <div className="no-print">
      <Button size="glove" onPress={() => setOpen(true)}>Cut as planned</Button>
      <Dialog title="Cut as planned" isOpen={isOpen} onOpenChange={setOpen}>
        <FieldForm action={submit} {...(failure ? { failure } : {})}>
          <p>{count} {count === 1 ? "sheet leaves" : "sheets leave"} the ledger; {panels} panels come in on the rack, each with its share of the ply, and {keptOffcuts} {keptOffcuts === 1 ? "offcut" : "offcuts"} worth keeping. The next plan takes those first. Timbers are not posted: take them out under Orders.</p>
          <TextField name="sheetBatch" label="Batch of the sheets" hint="As stamped on the pack; goes with every panel" maxLength={80} size="glove" />
          <div className="flex justify-end"><Button type="submit" kind="primary" size="glove" isPending={isPending}>They are cut</Button></div>
        </FieldForm>
      </Dialog>
    </div>
  );
}
