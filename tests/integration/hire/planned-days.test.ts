import { beforeAll, describe, expect, it } from "vitest";
import { getPlannedDays, savePlannedDays } from "#lib/server/pours/planned-days.ts";
import { recordSiteEvents } from "#lib/server/progress/record-site-events.ts";
import { aCompany, type Company } from "#tests/support/builders/a-company.ts";
import { aProject, type Project } from "#tests/support/builders/a-project.ts";
import { aTick } from "#tests/support/builders/a-site-event.ts";
import { refusal, valueOf } from "#tests/support/builders/value-of.ts";
import { ownDatabase } from "#tests/support/own-database.ts";

ownDatabase();
let company: Company;
let project: Project;
beforeAll(async () => {
  company = await aCompany("Rushy Mead Boxing");
  project = await aProject(company.office);
});

const days = (columnId: string, stoodOn: string | null, pouredOn: string | null, pour: string | null = null) => ({ columnId, stoodOn, pouredOn, pour });
const shown = async () => valueOf(await getPlannedDays(company.leadingHand, { projectId: project.projectId })).columns;

describe("planned days", () => {
  it("are set for the columns named and left for the others, until the site records its own", async () => {
    const { projectId, columnIds } = project;
    const [first = "", second = "", third = ""] = columnIds;
    valueOf(await savePlannedDays(company.office, { projectId, columns: [days(first, "2031-03-03", "2031-03-04", "Pour 1"), days(second, "2031-03-03", "2031-03-05")] }));
    valueOf(await savePlannedDays(company.leadingHand, { projectId, columns: [days(second, null, "2031-03-06"), days(third, null, null)] }));
    valueOf(await recordSiteEvents(company.leadingHand, { projectId, events: [aTick(first, "stood", { at: "2026-11-20T01:00:00Z", reason: "Tablet was flat" })] }));
    const rows = await shown();
    expect(rows.find(({ id }) => id === first)).toMatchObject({ pour: "Pour 1", stood: { on: "2026-11-20", isRecorded: true }, poured: { on: "2031-03-04", isRecorded: false } });
    expect(rows.find(({ id }) => id === second)).toMatchObject({ stood: null, poured: { on: "2031-03-06", isRecorded: false } });
    expect(rows.find(({ id }) => id === third)).toMatchObject({ stood: null, poured: null });
  });

  it("are refused when a column would be poured before it stands, is named twice, or is not there", async () => {
    const { projectId, columnIds } = project;
    const id = columnIds[3] ?? "";
    expect(refusal(await savePlannedDays(company.owner, { projectId, columns: [days(id, "2031-03-05", "2031-03-04")] }))).toBe("invalid");
    expect(refusal(await savePlannedDays(company.owner, { projectId, columns: [days(id, null, null), days(id, null, "2031-03-04")] }))).toBe("invalid");
    const other = await aProject(company.owner, { name: "Elsewhere" });
    expect(refusal(await savePlannedDays(company.owner, { projectId, columns: [days(other.columnIds[0] ?? "", null, "2031-03-04")] }))).toBe("not-found");
    expect((await shown()).find((row) => row.id === id)).toMatchObject({ stood: null, poured: null });
  });
});
