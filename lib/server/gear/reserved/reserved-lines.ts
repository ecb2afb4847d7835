import "server-only";
import { panelLife, type PanelSize } from "#lib/trade/gear/panel-life.ts";
import { isSound, panelRests, restDoubt, type RestDoubt } from "#lib/trade/gear/panel-rests.ts";
import { pieceFor, standingOf, type ReservedPanel, type Standing } from "#lib/trade/gear/reserved.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { readCuttingRule } from "../../cutting/read-cutting-rule.ts";
import { readProject } from "../../projects/store.ts";
import { restRule } from "../panels/cut-down.ts";
import { listPanels, type PanelRow } from "../panels/panel-store.ts";
import { listReserved, type ReservedRow } from "./reserved-store.ts";

const ON_SITE = new Set(["rack", "cleaning bay", "truck"]);
const whereIs = ({ placeKind, placeProjectId }: PanelRow, projectId: string): ReservedPanel["where"] => {
  if (placeKind === "yard" && placeProjectId === null) return "yard";
  if (placeProjectId !== projectId) return "gone";
  return placeKind === "column" ? "column" : ON_SITE.has(placeKind ?? "") ? "site" : "gone";
};

function outOfUse(row: PanelRow): string | null {
  const { ended, damaged, demoted } = panelLife(row, row.events, row.strippedAt);
  const told = (what: string, reason: string | null): string => `is ${what}${reason ? `: ${reason}` : ""}`;
  if (ended) return told(ended.kind, ended.reason);
  if (damaged) return told("damaged", damaged.reason);
  return demoted ? told("demoted", demoted.reason) : row.placeKind === "lost" ? "is lost" : null;
}

/** The panels named, as those who wait for them see them. */
export async function readReservedPanels(scope: ProjectScope, itemIds: readonly string[]): Promise<Map<string, ReservedPanel & { readonly place: string | null; readonly isSound: boolean }>> {
  const rows = itemIds.length === 0 ? [] : await listPanels(scope, { itemIds });
  const parentIds = rows.flatMap(({ cutFromId }) => cutFromId ?? []);
  const parents = new Map((parentIds.length === 0 ? [] : await listPanels(scope, { itemIds: parentIds })).map((row) => [row.itemId, row]));
  const isWhole = (itemId: string): boolean => {
    const parent = parents.get(itemId);
    return parent !== undefined && panelLife(parent, parent.events, parent.strippedAt).ended === null;
  };
  return new Map(rows.map((row) => [row.itemId, {
    itemId: row.itemId, name: row.name, widthMm: row.widthMm, heightMm: row.heightMm, where: whereIs(row, scope.projectId), columnId: row.columnId, place: row.place, outOfUse: outOfUse(row), isSound: isSound(row, panelLife(row, row.events, row.strippedAt)),
    cutFrom: row.cutFromId === null ? null : { itemId: row.cutFromId, isWhole: isWhole(row.cutFromId) },
  }]));
}

export type ReservedLine = ReservedRow & {
  readonly standing: Standing; readonly place: string | null;
  /** What is left worth keeping once it is cut down for its face, and what speaks against keeping it. */
  readonly rests: readonly PanelSize[]; readonly restDoubt: RestDoubt | null;
};

/** What is spoken for, and where each panel is now. */
export async function listReservedLines(scope: ProjectScope, columnIds: readonly string[] | null = null): Promise<ReservedLine[]> {
  const rows = await listReserved(scope, columnIds);
  const panels = await readReservedPanels(scope, [...new Set(rows.flatMap(({ itemId }) => itemId ?? []))]);
  const lines = rows.map((row) => {
    const panel = row.itemId === null ? undefined : panels.get(row.itemId);
    return { row, panel, standing: standingOf(row, panel) };
  });
  const rule = lines.some(({ standing }) => standing === "cut-down") ? restRule(readCuttingRule(await readProject(scope))) : null;
  return lines.map(({ row, panel, standing }) => ({
    ...row, standing, place: panel?.place ?? null, restDoubt: rule && panel ? restDoubt(panel.isSound, panel, rule) : null,
    rests: rule && panel && standing === "cut-down" ? panelRests(panel, [pieceFor(row, panel)], rule) : [],
  }));
}
