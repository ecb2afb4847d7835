import { gather } from "#lib/server/gear/pages/gather.ts";
import { recordSiteEvents } from "#lib/server/progress/record-site-events.ts";
import { saveMarks } from "#lib/server/projects/save-lists.ts";
import { addColumns } from "#lib/server/columns/change-columns.ts";
import { getSetUp } from "#lib/server/projects/get-set-up.ts";
import { aCompany } from "#tests/support/builders/a-company.ts";
import { aProject } from "#tests/support/builders/a-project.ts";
import { aStock } from "#tests/support/builders/a-stock.ts";
import { aTick } from "#tests/support/builders/a-site-event.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";
import { withBenchDatabase } from "./parts/bench-database.ts";
import { median, type Row } from "./parts/row.ts";

const ROUNDS = 15;
const MARKS = Array.from({ length: 12 }, (_, mark) => ({ name: `M${mark}`, shape: "rectangle" as const, widthMm: 300 + 25 * mark, depthMm: 350 + 25 * mark }));

async function timed(work: () => Promise<unknown>): Promise<number> {
  const started = performance.now();
  await work();
  return performance.now() - started;
}

/** Sixty columns of twelve marks: their list to gather, and a batch of ticks that moves their clamps. */
export async function run(): Promise<Row[]> {
  return withBenchDatabase(async () => {
    const { owner, leadingHand } = await aCompany("Gather Bench");
    const { projectId } = await aProject(owner, { gridX: ["Z"], gridY: ["99"] });
    const { marks: own } = valueOf(await getSetUp(owner, { projectId })) as { marks: (typeof MARKS)[number][] };
    valueOf(await saveMarks(owner, { projectId, marks: [...own, ...MARKS] }));
    const { marks: all, levels } = valueOf(await getSetUp(owner, { projectId }));
    const marks = all.filter(({ name }) => MARKS.some((mark) => mark.name === name));
    const columnIds: string[] = [];
    for (const [index, mark] of marks.entries()) {
      const lift = { projectId, markId: mark.id, fromLevelId: levels[0]?.id ?? "", toLevelId: levels[1]?.id ?? "", headedBy: "slab" as const };
      columnIds.push(...valueOf(await addColumns(owner, { ...lift, gridRefs: Array.from({ length: 5 }, (_, place) => `${index}.${place}`) })).columnIds);
    }
    await aStock(owner, projectId, { Wedge: 5000 });
    const gathered: number[] = [];
    for (let round = 0; round < ROUNDS; round += 1) gathered.push(await timed(() => gather(leadingHand, { projectId, columnIds })));
    const ticks = await timed(() => recordSiteEvents(leadingHand, { projectId, events: columnIds.slice(0, 50).map((id) => aTick(id, "clamped")) }));
    return [
      { what: "list to gather for 60 columns of 12 marks", measured: `${Math.round(median(gathered))} ms`, budget: "< 200 ms", ok: median(gathered) < 200 },
      { what: "50 columns clamped in one batch, their clamps moved", measured: `${Math.round(ticks)} ms`, budget: "no budget", ok: true },
    ];
  });
}
