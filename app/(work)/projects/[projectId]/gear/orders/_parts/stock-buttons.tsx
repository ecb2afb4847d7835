"use client";

import { useState } from "react";
import type { Material } from "#lib/contracts/planning/orders.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { Dialog } from "#app/_ui/control/dialog.tsx";
import type { Choice } from "#app/_ui/field/select-field.tsx";
import { PiecesForm, type Countable } from "../../_parts/forms/pieces-form.tsx";
import { cutUpMaterialAction, takeInMaterialAction } from "./actions.ts";

type Size = { readonly id: string; readonly name: string; readonly material: Material };
type Props = { readonly projectId: string; readonly sizes: readonly Size[]; readonly lying: readonly Countable[]; readonly places: readonly Choice[] };

/** What the saw took, and what was there before anything was ordered. */
export function StockButtons({ projectId, sizes, lying, places }: Props) {
  const [open, setOpen] = useState<"cut" | "in" | null>(null);
  const close = (isOpen: boolean) => { if (!isOpen) setOpen(null); };
  return (
    <div className="no-print flex flex-wrap gap-3">
      {lying.length > 0 ? <Button size="glove" onPress={() => setOpen("cut")}>Cut up</Button> : null}
      <Button size="glove" onPress={() => setOpen("in")}>Take in what is there</Button>
      <Dialog title="Cut up" isOpen={open === "cut"} onOpenChange={close}>
        <div className="flex flex-col gap-4">
          <p className="text-ink-soft">Sheets and lengths that went over the saw leave the count. The panels made of them are entered under Panels and sets.</p>
          <PiecesForm
            items={lying} from={places} label="They are cut" onDone={() => setOpen(null)}
            send={({ from, lines }) => cutUpMaterialAction({ projectId, placeId: from, happenedAt: new Date().toISOString(), lines })}
          />
        </div>
      </Dialog>
      <Dialog title="Take in what is there" isOpen={open === "in"} onOpenChange={close}>
        <div className="flex flex-col gap-4">
          <p className="text-ink-soft">Count what lay there before it was ordered here. What comes on an order is received against the order.</p>
          <PiecesForm
            items={sizes.map(({ id, name }) => ({ id, name }))} {...(places.length > 0 ? { to: places, toLabel: "It lies at" } : {})} label="Take in" onDone={() => setOpen(null)}
            send={({ to, lines }) => takeInMaterialAction({
              projectId, placeId: to || null,
              lines: lines.flatMap(({ itemId, quantity }) => { const size = sizes.find(({ id }) => id === itemId); return size ? [{ ...size.material, quantity }] : []; }),
            })}
          />
        </div>
      </Dialog>
    </div>
  );
}
