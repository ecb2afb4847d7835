"use client";

import type { Role } from "#lib/access/roles.ts";
import type { RecordAnswer } from "#lib/contracts/progress.ts";
import type { Plumbing } from "#lib/trade/progress/stages.ts";

/** A column as the panel needs it. */
export type TickColumn = {
  readonly id: string;
  readonly gridRef: string;
  readonly mark: string;
  /** The name of its level. */
  readonly level: string;
  readonly shape: "rectangle" | "circle";
  readonly widthMm: number;
  readonly depthMm: number;
  readonly done: number;
  readonly flagged: boolean;
};

export type TickPerson = { readonly id: string; readonly name: string; readonly role: Role };

export type TickPanelProps = {
  readonly project: { readonly id: string; readonly timeZone: string };
  readonly me: TickPerson;
  /** The project's setting; decides which stage is next. */
  readonly plumbing?: Plumbing;
  readonly columns: readonly TickColumn[];
  /** The server's answer to what was recorded, for the sheet to draw at once. */
  readonly onTaken?: (answer: RecordAnswer) => void;
  /** Asks for the selection to become these columns: those that were skipped. */
  readonly onSelectOnly?: (columnIds: readonly string[]) => void;
};

/** What can be recorded on the selected columns, under the thumb. */
export function TickPanel({ columns }: TickPanelProps) {
  return <p>{columns.length} columns</p>;
}
