"use server";

import { revalidatePath } from "next/cache";
import { instantOf, isDay, toDay } from "#lib/kernel/days.ts";
import { ok } from "#lib/kernel/result.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { enterInvoice, importInvoice, reverseInvoice, saveQuery } from "#lib/server/hire/invoices.ts";
import { addPhoto } from "#lib/server/hire/photos.ts";
import { countDocket, recordDocket } from "#lib/server/hire/record-docket.ts";
import { reverseDocket } from "#lib/server/hire/reverse-docket.ts";
import { addTerms, retireSupplier, reverseTerms, saveSupplier } from "#lib/server/hire/suppliers.ts";
import { textOf } from "#app/_ui/form/read-form.ts";
import { paths } from "#app/paths.ts";

const redraw = (projectId: string): void => revalidatePath(paths.hire(projectId), "layout");
type Answer = { readonly ok: boolean };
async function redrawn<T extends Answer>(projectId: string, work: Promise<T>): Promise<T> {
  const answer = await work;
  if (answer.ok) redraw(projectId);
  return answer;
}

/** A docket as its form sends it: the time of day by the site's clock, so that only the server needs its zone. */
export type DocketForm = { readonly timeZone: string; readonly time: string; readonly given: Record<string, unknown> };

export async function writeDocketAction({ timeZone, time, given }: DocketForm) {
  const on = String(given["on"]);
  const happenedAt = isDay(on) && /^\d{2}:\d{2}$/.test(time) ? instantOf(toDay(on), time, timeZone) : "";
  const caller = await currentCaller();
  const docket = { ...given, happenedAt } as never;
  const isGate = given["kind"] === "delivery" || given["kind"] === "return";
  return redrawn(String(given["projectId"]), isGate ? countDocket(caller, docket) : recordDocket(caller, docket));
}

/** Photos go one by one after the docket is written, so that a weak connection loses no count. */
export async function addPhotoAction(data: FormData) {
  const file = data.get("file");
  const bytes = file instanceof File ? new Uint8Array(await file.arrayBuffer()) : new Uint8Array();
  const projectId = textOf(data, "projectId");
  return redrawn(projectId, addPhoto(await currentCaller(), { projectId, docketId: textOf(data, "docketId"), takenAt: textOf(data, "takenAt"), file: bytes }));
}

const reversal = (data: FormData) => ({ projectId: textOf(data, "projectId"), subjectId: textOf(data, "subjectId"), reason: textOf(data, "reason") });
export async function reverseDocketAction(data: FormData) {
  return redrawn(textOf(data, "projectId"), reverseDocket(await currentCaller(), reversal(data)));
}
export async function reverseTermsAction(data: FormData) {
  return redrawn(textOf(data, "projectId"), reverseTerms(await currentCaller(), reversal(data)));
}
export async function reverseInvoiceAction(data: FormData) {
  return redrawn(textOf(data, "projectId"), reverseInvoice(await currentCaller(), reversal(data)));
}

export async function saveSupplierAction(data: FormData) {
  const supplierId = textOf(data, "supplierId") || undefined;
  const projectId = textOf(data, "projectId");
  const given = { projectId, supplierId, name: textOf(data, "name"), contact: textOf(data, "contact"), phone: textOf(data, "phone"), email: textOf(data, "email") };
  return redrawn(projectId, saveSupplier(await currentCaller(), given));
}
export async function retireSupplierAction(projectId: string, supplierId: string) {
  return redrawn(projectId, retireSupplier(await currentCaller(), { projectId, supplierId }));
}
export async function addTermsAction(input: Parameters<typeof addTerms>[1]) {
  return redrawn(input.projectId, addTerms(await currentCaller(), input));
}

const invoiceHead = (data: FormData) => ({
  projectId: textOf(data, "projectId"), supplierId: textOf(data, "supplierId"), number: textOf(data, "number"), issuedOn: textOf(data, "issuedOn"),
  from: textOf(data, "from"), to: textOf(data, "to"), currency: textOf(data, "currency"),
});
export async function importInvoiceAction(data: FormData) {
  const given = data.get("file");
  const file = given instanceof File ? given : new File([], "");
  const head = invoiceHead(data);
  return redrawn(head.projectId, importInvoice(await currentCaller(), { ...head, fileName: file.name || "invoice", file: new Uint8Array(await file.arrayBuffer()) }));
}
export async function enterInvoiceAction(input: Parameters<typeof enterInvoice>[1]) {
  return redrawn(input.projectId, enterInvoice(await currentCaller(), input));
}
export async function saveQueryAction(input: Parameters<typeof saveQuery>[1]) {
  const saved = await redrawn(input.projectId, saveQuery(await currentCaller(), input));
  return saved.ok ? ok(null) : saved;
}
