import { promisify } from "node:util";
import { inflateRaw } from "node:zlib";
import { FileRefusal, MAX_EXPANDED_BYTES, MAX_PACKING, MAX_ZIP_ENTRIES, PACKING_IGNORED_BELOW_BYTES } from "./limits.ts";

/** One file in a zip, as its central directory lists it (PKWARE APPNOTE 6.3.10, section 4.3.12). */
export type ZipEntry = {
  readonly name: string;
  readonly method: number;
  readonly encrypted: boolean;
  readonly packedBytes: number;
  readonly expandedBytes: number;
  readonly headerAt: number;
};

const DAMAGED = "The workbook is damaged. Open it in a spreadsheet, save it again as .xlsx and upload that.";
const TOO_LARGE = "The workbook unpacks to far more than a schedule holds. Copy the schedule into a new workbook and upload that.";
const END_SIGNATURE = 0x06054b50;
const ENTRY_SIGNATURE = 0x02014b50;
const HEADER_SIGNATURE = 0x04034b50;

/** Lists a zip without unpacking anything, and refuses what is too large, locked or out of shape by its own account. */
export function listZip(bytes: Uint8Array): ZipEntry[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = findEnd(view);
  const count = view.getUint16(end + 10, true);
  if (count > MAX_ZIP_ENTRIES) throw new FileRefusal(TOO_LARGE);
  const entries: ZipEntry[] = [];
  let at = view.getUint32(end + 16, true);
  for (let index = 0; index < count; index += 1) {
    if (at + 46 > end || view.getUint32(at, true) !== ENTRY_SIGNATURE) throw new FileRefusal(DAMAGED);
    const nameBytes = view.getUint16(at + 28, true);
    entries.push({
      name: new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + nameBytes)),
      method: view.getUint16(at + 10, true),
      encrypted: (view.getUint16(at + 8, true) & 1) === 1,
      packedBytes: view.getUint32(at + 20, true),
      expandedBytes: view.getUint32(at + 24, true),
      headerAt: view.getUint32(at + 42, true),
    });
    at += 46 + nameBytes + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  refuseHostile(entries);
  return entries;
}

function findEnd(view: DataView): number {
  const lowest = Math.max(0, view.byteLength - 22 - 0xffff);
  for (let at = view.byteLength - 22; at >= lowest; at -= 1) {
    if (view.getUint32(at, true) === END_SIGNATURE) return at;
  }
  throw new FileRefusal(DAMAGED);
}

function refuseHostile(entries: readonly ZipEntry[]): void {
  if (entries.some((entry) => entry.encrypted)) throw new FileRefusal("The file is locked with a password. Remove the password and upload it again.");
  if (new Set(entries.map((entry) => entry.name)).size !== entries.length) throw new FileRefusal(DAMAGED);
  const expanded = entries.reduce((sum, entry) => sum + entry.expandedBytes, 0);
  const packed = entries.some((entry) => entry.expandedBytes > PACKING_IGNORED_BELOW_BYTES && entry.expandedBytes > entry.packedBytes * MAX_PACKING);
  if (expanded > MAX_EXPANDED_BYTES || packed) throw new FileRefusal(TOO_LARGE);
}

/** Unpacks the wanted entries, never beyond the limit whatever sizes the directory claimed. */
export async function unpackZip(bytes: Uint8Array, entries: readonly ZipEntry[]): Promise<Map<string, Uint8Array>> {
  const unpacked = new Map<string, Uint8Array>();
  let left = MAX_EXPANDED_BYTES;
  for (const entry of entries) {
    const content = await unpackEntry(bytes, entry, left);
    left -= content.length;
    unpacked.set(entry.name, content);
  }
  return unpacked;
}

async function unpackEntry(bytes: Uint8Array, entry: ZipEntry, limit: number): Promise<Uint8Array> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const at = entry.headerAt;
  if (at + 30 > bytes.length || view.getUint32(at, true) !== HEADER_SIGNATURE) throw new FileRefusal(DAMAGED);
  const start = at + 30 + view.getUint16(at + 26, true) + view.getUint16(at + 28, true);
  const packed = bytes.subarray(start, start + entry.packedBytes);
  if (packed.length !== entry.packedBytes) throw new FileRefusal(DAMAGED);
  if (entry.method === 0) return packed.length <= limit ? packed : tooLarge();
  if (entry.method !== 8) throw new FileRefusal(DAMAGED);
  try {
    const content = await promisify(inflateRaw)(packed, { maxOutputLength: Math.max(1, limit) });
    return content.length > PACKING_IGNORED_BELOW_BYTES && content.length > packed.length * MAX_PACKING ? tooLarge() : content;
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "ERR_BUFFER_TOO_LARGE") return tooLarge();
    if (error instanceof FileRefusal) throw error;
    throw new FileRefusal(DAMAGED);
  }
}

function tooLarge(): never {
  throw new FileRefusal(TOO_LARGE);
}
