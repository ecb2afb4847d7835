"use client";

import { useState } from "react";
import { MM_PER_INCH } from "#lib/kernel/us-units.ts";
import type { ReadingTime } from "#lib/trade/progress/site-event.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { ChoiceGroup } from "#app/_ui/field/choice-group.tsx";
import { NumberField } from "#app/_ui/field/number-field.tsx";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import type { ActFormProps } from "./act-dialog.tsx";

type Lean = { readonly by: number; readonly towards: string };
const UPRIGHT: Lean = { by: Number.NaN, towards: "" };

/** Millimetres with the sign of the plan's axes; null until it is whole. */
function offsetMm({ by, towards }: Lean, units: Units): number | null {
  if (!Number.isFinite(by) || by < 0) return null;
  if (by === 0) return 0;
  if (towards === "") return null;
  const mm = units === "us" ? Math.round(by * MM_PER_INCH * 10) / 10 : by;
  return towards === "plus" ? mm : -mm;
}

/** Where the head of the column stands against its foot. */
export function ReadingForm({ onAct, units, isPoured }: ActFormProps & { readonly units: Units; readonly isPoured: boolean }) {
  const [when, setWhen] = useState<ReadingTime>(isPoured ? "after-pour" : "before-pour");
  const [x, setX] = useState(UPRIGHT);
  const [y, setY] = useState(UPRIGHT);
  const offsets = { x: offsetMm(x, units), y: offsetMm(y, units) };
  const isWhole = offsets.x !== null && offsets.y !== null;
  return (
    <form
      className="flex flex-col gap-4"
      onSubmit={(event) => {
        event.preventDefault();
        if (offsets.x !== null && offsets.y !== null) onAct({ kind: "reading", when, offsets_mm: { x: offsets.x, y: offsets.y } }, null);
      }}
    >
      <ChoiceGroup
        name="when" label="Read" size="glove" value={when} onChange={(value) => setWhen(value === "after-pour" ? "after-pour" : "before-pour")}
        choices={[{ value: "before-pour", label: "before the pour" }, { value: "after-pour", label: "after the pour" }]}
      />
      <p>How far the head is out from the foot, as seen on the plan.</p>
      <LeanFields axis="x" lean={x} units={units} onChange={setX} plus="right" minus="left" />
      <LeanFields axis="y" lean={y} units={units} onChange={setY} plus="up" minus="down" />
      <Button type="submit" kind="primary" size="glove" wide isDisabled={!isWhole}>Record the reading</Button>
    </form>
  );
}

type LeanFieldsProps = {
  readonly axis: "x" | "y"; readonly lean: Lean; readonly units: Units; readonly plus: string; readonly minus: string;
  readonly onChange: (lean: Lean) => void;
};

/** A figure and a direction: a minus sign is hard to find on a phone. */
function LeanFields({ axis, lean, units, plus, minus, onChange }: LeanFieldsProps) {
  return (
    <div className="grid grid-cols-[minmax(7rem,1fr)_2fr] items-end gap-3 border-t border-rule-soft pt-3">
      <NumberField
        name={`${axis}-by`} label={`In ${axis}`} unit={units === "us" ? "in" : "mm"} size="glove" minValue={0} maxValue={units === "us" ? 19 : 500}
        places={units === "us" ? 3 : 1} value={lean.by} onChange={(by) => onChange({ ...lean, by })} isRequired
      />
      <ChoiceGroup
        name={`${axis}-towards`} label={`Leans in ${axis}`} size="glove" value={lean.towards} onChange={(towards) => onChange({ ...lean, towards })}
        isRequired={lean.by !== 0} choices={[{ value: "minus", label: minus }, { value: "plus", label: plus }]}
      />
    </div>
  );
}
