"use client";

import { useState } from "react";
import { Button } from "#app/_ui/control/button.tsx";
import { Dialog } from "#app/_ui/control/dialog.tsx";
import { ChangeForm } from "./change-form.tsx";
import type { StoredColumn } from "./stored-column.ts";

export function ChangeColumn({ stored }: { readonly stored: StoredColumn }) {
  const [isOpen, setOpen] = useState(false);
  return (
    <Dialog title={`Change ${stored.name}`} trigger={<Button>Change</Button>} isOpen={isOpen} onOpenChange={setOpen} isAlert>
      {(close) => <ChangeForm stored={stored} onClose={close} />}
    </Dialog>
  );
}
