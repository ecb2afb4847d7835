import { type Failure, type Fail, invalid } from "#lib/kernel/result.ts";

export const MAX_UPLOAD_BYTES = 10 * 1024 * 1024;
export const MAX_ROWS = 20_000;
export const MAX_COLUMNS = 200;
/** Filled cells in a whole file; a schedule of 20,000 rows fills about half as many. */
export const MAX_FILLED_CELLS = 500_000;
/** The last row a spreadsheet can have; a row number beyond it is damage or malice. */
export const LAST_SHEET_ROW = 1_048_576;
export const MAX_SHEETS = 50;
export const MAX_ZIP_ENTRIES = 1000;
export const MAX_EXPANDED_BYTES = 40 * 1024 * 1024;
/** Spreadsheet XML packs 10 to 50 times; deflate's ceiling is near 1000, which only a bomb comes close to. */
export const MAX_PACKING = 250;
export const PACKING_IGNORED_BELOW_BYTES = 1024 * 1024;

/** One clear line about the file as a whole. */
export const refuseFile = (message: string): Fail<Failure> => invalid({ field: "file", message });

export const TOO_MANY_CELLS = `The file fills more than ${MAX_FILLED_CELLS} cells. Copy the schedule alone into a new file and upload that.`;

/** Thrown and caught inside this folder only: carries the line to show. */
export class FileRefusal extends Error {}
