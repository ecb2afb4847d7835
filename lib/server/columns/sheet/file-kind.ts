import { FileRefusal } from "./limits.ts";

const SAVE_AS = "Save it as .xlsx or .csv and upload that.";

/** Files known by their first bytes that are not schedules, with the name a person has for them. */
const OTHERS: readonly (readonly [string, string])[] = [
  ["%PDF", "a PDF"],
  ["\u0089PNG", "a picture"],
  ["\u00ff\u00d8\u00ff", "a picture"],
  ["GIF8", "a picture"],
  ["\u001f\u008b", "a gzip archive"],
  ["Rar!", "a RAR archive"],
  ["7z\u00bc\u00af", "a 7z archive"],
  ["AC10", "a drawing"],
  ["{\\rtf", "a text document"],
  ["MZ", "a program"],
  ["\u007fELF", "a program"],
];

/** Decides by content, not by name; throws a refusal that says what the file is instead. */
export function fileKind(bytes: Uint8Array, fileName: string): "xlsx" | "text" {
  const head = Buffer.from(bytes.buffer, bytes.byteOffset, Math.min(bytes.length, 1024)).toString("latin1");
  if (bytes.length === 0) throw new FileRefusal("The file is empty.");
  if (head.startsWith("PK\u0003\u0004") || head.startsWith("PK\u0005\u0006")) return "xlsx";
  if (head.startsWith("\u00d0\u00cf\u0011\u00e0")) throw new FileRefusal(oldOrLocked(bytes));
  const other = OTHERS.find(([magic]) => head.startsWith(magic));
  if (other) throw new FileRefusal(`This is ${other[1]}, not a spreadsheet. ${SAVE_AS}`);
  const text = head.replace(/\u0000/g, "").replace(/^[\u00ef\u00bb\u00bf\u00ff\u00fe\s]+/, "").toLowerCase();
  if (/^(?:<!doctype html|<html|<table|<\?xml|<meta|<head)/.test(text)) {
    throw new FileRefusal(`This is a web page or XML under a spreadsheet's name. ${SAVE_AS}`);
  }
  if (/\.(?:xlsx|xlsm|xls|xlsb|ods|pdf)$/i.test(fileName)) {
    throw new FileRefusal(`The name says spreadsheet but the file holds plain text. Give it the ending .csv, or save it again as .xlsx.`);
  }
  return "text";
}

function oldOrLocked(bytes: Uint8Array): string {
  const locked = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length).includes(Buffer.from("EncryptedPackage", "utf16le"));
  return locked ? "The workbook is locked with a password. Remove the password and upload it again." : `This is an old .xls workbook (or another file of that family). ${SAVE_AS}`;
}
