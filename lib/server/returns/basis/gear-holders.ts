import "server-only";
import { addDays, dayIn, type Day } from "#lib/kernel/days.ts";
import { formTime } from "#lib/trade/planning/demand/form-times.ts";
import type { GearHolder } from "#lib/trade/planning/demand/gear-demand.ts";
import { columnForm } from "../../columns/column-form.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import type { ItemRow } from "../../gear/ledger/item-store.ts";
import { listClampKindRows } from "../../projects/clamp-store.ts";
import { readRules } from "../../projects/project-head.ts";
import { readProject } from "../../projects/store.ts";
import { type FormRow, listDays, listForms } from "./form-store.ts";

export type Holders = {
  readonly holders: readonly GearHolder[];
  /** Items of which the need of every column is known. */
  readonly known: ReadonlySet<string>;
  readonly nameOf: ReadonlyMap<string, string>;
  /** Weight of one clamp set, whole kilograms. */
  readonly kgOf: ReadonlyMap<string, number>;
  /** Columns without a day to stand or without a form set: nothing is counted for them. */
  readonly unknown: number;
};

/** Every column with the clamps and wedges that hold its form, over the days it stands. */
export async function readHolders(scope: ProjectScope, items: readonly ItemRow[], today: Day, cleaningDays: number): Promise<Holders> {
  const project = await readProject(scope);
  const rules = readRules(project);
  const [forms, days, kinds] = [await listForms(scope), await listDays(scope), await listClampKindRows(scope)];
  const daysOf = new Map(days.map((row) => [row.id, row]));
  const wedge = items.find(({ family }) => family === "wedge");
  const sets = new Map(items.flatMap((item) => (item.family === "clamp set" && item.clampKindId !== null ? [[item.clampKindId, item] as const] : [])));
  const gearOf = designed(rules, kinds, sets, wedge);
  const stripDays = Math.ceil(rules.progressRule.stripAfterHours / 24);
  const onSite = (at: string | null): Day | null => (at === null ? null : dayIn(at, project.timeZone));
  const rows = forms.map((form) => {
    const row = daysOf.get(form.id);
    const stoodOn = row?.plannedStoodOn ?? row?.plannedPouredOn ?? null;
    const pouredOn = row ? onSite(row.pouredAt) ?? row.plannedPouredOn ?? stoodOn : null;
    const time = row ? formTime({
      planned: stoodOn && pouredOn ? { stoodOn, strippedOn: addDays(pouredOn, stripDays) } : null,
      recorded: { stoodOn: onSite(row.stoodAt), strippedOn: onSite(row.strippedAt) },
    }, today, cleaningDays) : null;
    return { form, time, isDone: (row?.strippedAt ?? null) !== null, gear: gearOf(form) };
  });
  return {
    holders: rows.flatMap(({ form, time, gear }) => (time && gear ? [{ columnId: form.id, gear, ...time }] : [])),
    known: new Set([...sets.values(), ...(wedge ? [wedge] : [])].map(({ id }) => id)),
    nameOf: new Map(forms.map((form) => [form.id, `${form.gridRef}, ${form.fromLevel.name}`])),
    kgOf: new Map(kinds.flatMap((kind) => {
      const set = sets.get(kind.id);
      return set ? [[set.id, Math.ceil(kind.weightKg)] as const] : [];
    })),
    unknown: rows.filter(({ time, isDone, gear }) => !isDone && (!time || !gear)).length,
  };
}

/** The gear of a form; columns of the same sizes are designed once. */
function designed(rules: ReturnType<typeof readRules>, kinds: Parameters<typeof columnForm>[2], sets: ReadonlyMap<string, ItemRow>, wedge: ItemRow | undefined) {
  const known = new Map<string, GearHolder["gear"] | null>();
  const design = (form: FormRow): GearHolder["gear"] | null => {
    const { formSet } = columnForm(form, rules, kinds);
    const set = formSet.ok ? sets.get(formSet.value.clamps.kind.id) : undefined;
    if (!formSet.ok || !set) return null;
    const count = formSet.value.clamps.heights.length;
    const wedges = count * (set.wedgesEach ?? 0);
    return [{ itemId: set.id, count }, ...(wedge && wedges > 0 ? [{ itemId: wedge.id, count: wedges }] : [])];
  };
  return (form: FormRow): GearHolder["gear"] | null => {
    const key = [form.shape, form.widthMm, form.depthMm, form.formHeightMm, form.headedBy, form.fromLevelId, form.toLevelId].join(" ");
    const kept = known.get(key);
    if (kept !== undefined) return kept;
    const gear = design(form);
    known.set(key, gear);
    return gear;
  };
}
