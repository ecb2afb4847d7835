"use client";

import { useState } from "react";
import { Button } from "#app/_ui/control/button.tsx";
import { Dialog } from "#app/_ui/control/dialog.tsx";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { DataTable, type DataColumn } from "#app/_ui/page/data-table.tsx";
import { lengthFigure, quantityText, type Units } from "#app/_ui/value/format-quantity.ts";
import { ClampKindForm } from "./clamp-kind-form.tsx";
import type { ClampKind } from "./clamp-kind.ts";
import { RetireButton } from "./retire-button.tsx";

export type ClampKindsProps = { readonly kinds: readonly ClampKind[]; readonly units: Units; readonly canEdit: boolean };

/** The kinds in a table, with what changes them laid over the page. */
export function ClampKinds({ kinds, units, canEdit }: ClampKindsProps) {
  const [open, setOpen] = useState<ClampKind | "new" | undefined>(undefined);
  const add = canEdit ? <Button kind="primary" onPress={() => setOpen("new")}>Add a clamp kind</Button> : null;
  const columns = clampColumns(units, canEdit ? setOpen : undefined);
  return (
    <>
      <DataTable
        caption="Clamp kinds" isCaptionHidden columns={columns} rows={kinds} rowKey={(kind) => kind.id}
        empty={<EmptyState title="No clamp kinds yet" actions={add}>Enter the clamps as the hirer states them; without one no clamp layout can be made.</EmptyState>}
      />
      {kinds.length > 0 && add ? <div>{add}</div> : null}
      <Dialog
        title={open === "new" || open === undefined ? "New clamp kind" : `Change ${open.name}`}
        isOpen={open !== undefined}
        onOpenChange={(isOpen) => { if (!isOpen) setOpen(undefined); }}
        isAlert
      >
        {(close) => (
          <div className="flex flex-col gap-5">
            <ClampKindForm {...(open !== undefined && open !== "new" ? { kind: open } : {})} units={units} onDone={close} />
            {open !== undefined && open !== "new" ? (
              <div className="border-t-2 border-ink pt-4"><RetireButton clampKindId={open.id} name={open.name} onDone={close} /></div>
            ) : null}
          </div>
        )}
      </Dialog>
    </>
  );
}

/** The one capacity, and what further figures a layout is held to. */
function Capacity({ kind, units }: { readonly kind: ClampKind; readonly units: Units }) {
  const { capacityBySpan: lines = [], arm, wedgeCapacity } = kind;
  const more = [
    ...lines.map(({ span, load }) => `up to ${lengthFigure(span, units)}: ${quantityText(load, "kN", units)}`),
    ...(wedgeCapacity === undefined ? [] : [`wedge ${quantityText(wedgeCapacity, "kN", units)}`]),
    ...(arm === undefined ? [] : ["arm in bending"]),
  ];
  return <>{quantityText(kind.sideCapacity, "kN", units)}{more.map((line) => <span key={line} className="block text-sm text-ink-soft">{line}</span>)}</>;
}

function clampColumns(units: Units, onChange: ((kind: ClampKind) => void) | undefined): readonly DataColumn<ClampKind>[] {
  const figure = (value: number) => lengthFigure(value, units);
  const unit = units === "us" ? "ft-in" : "mm";
  return [
    { key: "name", head: "Name", isRowHead: true, cell: (kind) => kind.name },
    { key: "size", head: `Fits over (${unit})`, isFigure: true, cell: (kind) => `${figure(kind.minSize)} to ${figure(kind.maxSize)}` },
    { key: "capacity", head: "Capacity of one side", isFigure: true, cell: (kind) => <Capacity kind={kind} units={units} /> },
    { key: "bar", head: `Bar (${unit})`, isFigure: true, cell: (kind) => `${figure(kind.barLength)} × ${figure(kind.barDepth)} × ${figure(kind.barThickness)}` },
    { key: "weight", head: "Weight", isFigure: true, cell: (kind) => quantityText(kind.weight, "kg", units) },
    {
      key: "source", head: "Source",
      cell: (kind) => (kind.isExample ? <span className="text-flag-deep"><strong>Example figures.</strong> Replace by the hirer&rsquo;s.</span> : kind.source),
    },
    ...(onChange ? [{
      key: "change", head: <span className="sr-only">Change</span>,
      cell: (kind: ClampKind) => <Button aria-label={`Change ${kind.name}`} onPress={() => onChange(kind)}>Change</Button>,
    }] : []),
  ];
}
