import "server-only";
import type { TimberUse } from "#lib/contracts/planning/cutting.ts";
import { asShutterRule } from "#lib/contracts/shutter.ts";
import { timberNames } from "#lib/trade/shutter/cutting-list.ts";
import type { readRules } from "../projects/project-head.ts";

/** What sheets and timbers of the project are called in the ledger; no fillet where the arris stays sharp. */
export type MaterialNames = { readonly ply: string } & Readonly<Record<TimberUse, string | null>>;

export const materialNames = ({ shutterRule }: Pick<ReturnType<typeof readRules>, "shutterRule">): MaterialNames => ({ ply: shutterRule.ply.label, ...timberNames(asShutterRule(shutterRule)) });
