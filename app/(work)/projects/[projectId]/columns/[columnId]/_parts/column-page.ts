import type { ColumnPage as Answer } from "#lib/server/columns/get-column.ts";

/** Everything the page of one column is drawn from. */
export type ColumnPage = Answer;
