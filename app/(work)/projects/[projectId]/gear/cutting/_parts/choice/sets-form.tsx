import Form from "next/form";
import { Button } from "#app/_ui/control/button.tsx";
import { NumberField } from "#app/_ui/field/number-field.tsx";
import { sectionText, quantityText, type Units } from "#app/_ui/value/format-quantity.ts";
import { paths } from "#app/paths.ts";
import type { CuttingTask } from "#lib/server/cutting/plan-cutting.ts";

export type SetsFormProps = { readonly projectId: string; readonly levelId: string; readonly groups: CuttingTask["groups"]; readonly units: Units; /** Where the answer stands; the cutting plan unless said otherwise. */ readonly action?: string; readonly label?: string };

/** How many form sets of each size to cut; the crew may strip and set one again, so fewer than there are columns. */
export function SetsForm({ projectId, levelId, groups, units, action, label = "Plan the cuts" }: SetsFormProps) {
  return (
    <Form action={action ?? paths.cutting(projectId)} className="flex flex-col gap-4">
      <input type="hidden" name="level" value={levelId} />
      <div className="grid items-start gap-x-5 gap-y-4 sm:grid-cols-2 lg:grid-cols-4">
        {groups.map(({ size, marks, widthMm, depthMm, heightMm, columns, toCut, faces, sets }) => (
          <NumberField
            key={`${size} ${sets}`} name={`sets.${size}`} label={`${faces === null ? "Sets" : `Faces ${[...faces].join(", ")}`} of ${marks.join(", ")}`} defaultValue={sets} isRequired minValue={0} maxValue={500} step={1} places={0} size="glove"
            hint={`${sectionText("rectangle", widthMm, depthMm, units)}, ${quantityText(heightMm, "mm", units)} high; ${columns === 1 ? "1 column" : `${columns} columns`}${toCut < columns ? `, ${toCut} not cut yet` : ""}${faces === null ? "" : "; the other faces use panels again"}`}
          />
        ))}
      </div>
      <div><Button type="submit" kind="primary">{label}</Button></div>
    </Form>
  );
}
