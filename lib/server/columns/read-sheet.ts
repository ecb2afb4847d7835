import { ok, type Result } from "#lib/kernel/result.ts";
import type { Sheet } from "#lib/trade/schedule/table/sheet.ts";
import { fileKind } from "./sheet/file-kind.ts";
import { FileRefusal, MAX_UPLOAD_BYTES, refuseFile } from "./sheet/limits.ts";
import { readCsv } from "./sheet/read-csv.ts";
import { readXlsx } from "./sheet/read-xlsx.ts";

/** An uploaded CSV or XLSX file as cells. A hostile, foreign or damaged file is refused with one line, before it is expanded. */
export async function readSheet(bytes: Uint8Array, fileName: string): Promise<Result<readonly Sheet[]>> {
  if (bytes.length > MAX_UPLOAD_BYTES) return refuseFile(`The file is larger than ${MAX_UPLOAD_BYTES / 1024 / 1024} MB. Upload the schedule alone, without drawings or pictures.`);
  try {
    return ok(fileKind(bytes, fileName) === "xlsx" ? await readXlsx(bytes) : [readCsv(bytes, sheetName(fileName))]);
  } catch (error) {
    if (error instanceof FileRefusal) return refuseFile(error.message);
    throw error;
  }
}

const sheetName = (fileName: string): string => fileName.replace(/^.*[\\/]/, "").replace(/\.[^.]*$/, "").slice(0, 100) || "Schedule";
