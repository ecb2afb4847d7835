"use client";

import { useState } from "react";
import type { Stage } from "#lib/trade/progress/stages.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { Dialog } from "#app/_ui/control/dialog.tsx";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { ChangeForm } from "./change-form.tsx";

/** What of a column can be changed by hand, as it is stored. */
export type StoredColumn = {
  readonly projectId: string; readonly columnId: string; readonly name: string; readonly version: number; readonly units: Units;
  readonly shape: "rectangle" | "circle"; readonly widthMm: number; readonly depthMm: number; readonly headedBy: "slab" | "beam";
  readonly formHeightMm: number | null; readonly concrete: string | null; readonly remarks: string | null;
  readonly stage: Stage | null; readonly isStood: boolean;
  /** Who changed it last in the schedule, with the time in the zone of the site. */
  readonly lastChange: string | null;
};

export function ChangeColumn({ stored }: { readonly stored: StoredColumn }) {
  const [isOpen, setOpen] = useState(false);
  return (
    <Dialog title={`Change ${stored.name}`} trigger={<Button>Change</Button>} isOpen={isOpen} onOpenChange={setOpen} isAlert>
      {(close) => <ChangeForm stored={stored} onClose={close} />}
    </Dialog>
  );
}
