import "server-only";
import { dayIn, type Day } from "#lib/kernel/days.ts";
import { type ColumnGearRow, gearByRows } from "#lib/trade/planning/demand/column-gear.ts";
import { formTime, type HeldTime } from "#lib/trade/planning/demand/form-times.ts";
import type { GearHolder } from "#lib/trade/planning/demand/gear-demand.ts";
import { columnForm } from "../../columns/column-form.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import type { ItemRow } from "../../gear/ledger/item-store.ts";
import { listClampKindRows } from "../../projects/clamp-store.ts";
import { readRules } from "../../projects/project-head.ts";
import { readProject } from "../../projects/store.ts";
import { type FormRow, listDays, listForms } from "./form-store.ts";
import { readColumnGear } from "./read-column-gear.ts";

export type Holders = {
  readonly holders: readonly GearHolder[];
  /** Items of which the need of every column is known. */
  readonly known: ReadonlySet<string>;
  readonly nameOf: ReadonlyMap<string, string>;
  /** Weight of one clamp set, whole kilograms. */
  readonly kgOf: ReadonlyMap<string, number>;
  /** Columns without a day to stand, or whose gear cannot be told: it is not counted. */
  readonly unknown: number;
  /** Columns that nobody has given a day to be poured: they hold their gear to the end. */
  readonly endless: number;
  /** Days from pour to strip, by the project's rule. */
  readonly stripDays: number;
};

type Gear = { readonly gear: GearHolder["gear"]; readonly isWhole: boolean };

/** Every column with the clamps and wedges that hold its form and what else it holds, over the days it stands. */
export async function readHolders(scope: ProjectScope, items: readonly ItemRow[], today: Day, cleaningDays: number): Promise<Holders> {
  const project = await readProject(scope);
  const rules = readRules(project);
  const [forms, days, kinds] = [await listForms(scope), await listDays(scope), await listClampKindRows(scope)];
  const daysOf = new Map(days.map((row) => [row.id, row]));
  const wedge = items.find(({ family }) => family === "wedge");
  const sets = new Map(items.flatMap((item) => (item.family === "clamp set" && item.clampKindId !== null ? [[item.clampKindId, item] as const] : [])));
  const counted = readColumnGear(project).rows.filter(({ itemId }) => items.some(({ id }) => id === itemId));
  const gearOf = designed(rules, kinds, sets, wedge, counted);
  const stripDays = Math.ceil(rules.progressRule.stripAfterHours / 24);
  const onSite = (at: string | null | undefined): Day | null => (at ? dayIn(at, project.timeZone) : null);
  const rows = forms.map((form) => {
    const row = daysOf.get(form.id);
    const time = formTime({
      planned: { stoodOn: row?.plannedStoodOn ?? null, pouredOn: row?.plannedPouredOn ?? null },
      recorded: { stoodOn: onSite(row?.stoodAt), pouredOn: onSite(row?.pouredAt), strippedOn: onSite(row?.strippedAt) },
    }, today, { stripDays, cleaningDays });
    return { form, time, isDone: (row?.strippedAt ?? null) !== null, ...gearOf(form) };
  });
  const end = rows.reduce<Day>((last, { time }) => (time?.to && time.to > last ? time.to : last), today);
  return {
    holders: rows.flatMap(({ form, time, gear }) => (time && gear.length > 0 ? [{ columnId: form.id, gear, ...ended(time, end) }] : [])),
    known: new Set([...[...sets.values(), ...(wedge ? [wedge] : [])].map(({ id }) => id), ...counted.map(({ itemId }) => itemId)]),
    nameOf: new Map(forms.map((form) => [form.id, `${form.gridRef}, ${form.fromLevel.name}`])),
    kgOf: new Map(kinds.flatMap((kind) => {
      const set = sets.get(kind.id);
      return set ? [[set.id, Math.ceil(kind.weightKg)] as const] : [];
    })),
    unknown: rows.filter(({ time, isDone, isWhole }) => !isDone && (!time || !isWhole)).length,
    endless: rows.filter(({ time }) => time?.to === null).length,
    stripDays,
  };
}

const ended = ({ from, to }: HeldTime, end: Day) => ({ from, to: to ?? (from > end ? from : end) });

/** The gear of a form; columns of the same sizes are designed once. */
function designed(rules: ReturnType<typeof readRules>, kinds: Parameters<typeof columnForm>[2], sets: ReadonlyMap<string, ItemRow>, wedge: ItemRow | undefined, counted: readonly ColumnGearRow[]) {
  const known = new Map<string, Gear>();
  const design = (form: FormRow): Gear => {
    const { height, formSet } = columnForm(form, rules, kinds);
    const byRows = gearByRows({ levelId: form.fromLevelId, sideMm: Math.max(form.widthMm, form.depthMm), heightMm: height.ok ? height.value.height : null }, counted);
    const set = formSet.ok ? sets.get(formSet.value.clamps.kind.id) : undefined;
    if (!formSet.ok || !set) return { gear: byRows ?? [], isWhole: false };
    const count = formSet.value.clamps.heights.length;
    const wedges = count * (set.wedgesEach ?? 0);
    return { gear: [{ itemId: set.id, count }, ...(wedge && wedges > 0 ? [{ itemId: wedge.id, count: wedges }] : []), ...(byRows ?? [])], isWhole: byRows !== null };
  };
  return (form: FormRow): Gear => {
    const key = [form.shape, form.widthMm, form.depthMm, form.formHeightMm, form.headedBy, form.fromLevelId, form.toLevelId].join(" ");
    const kept = known.get(key) ?? design(form);
    known.set(key, kept);
    return kept;
  };
}
