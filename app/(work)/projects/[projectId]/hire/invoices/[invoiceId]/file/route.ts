import { currentCaller } from "#lib/server/gate/session.ts";
import { getInvoiceFile } from "#lib/server/hire/invoices.ts";
import { answerFailure } from "#app/api/answer-failure.ts";

type Context = { readonly params: Promise<{ projectId: string; invoiceId: string }> };

/** The supplier's file as it came; never opened in the page, whatever it holds. */
export async function GET(_request: Request, { params }: Context): Promise<Response> {
  const found = await getInvoiceFile(await currentCaller(), await params);
  if (!found.ok) return answerFailure(found.failure);
  const name = found.value.fileName.replace(/[^\w.-]+/g, "-");
  return new Response(Uint8Array.from(found.value.file), { headers: { "content-type": "application/octet-stream", "content-disposition": `attachment; filename="${name}"`, "cache-control": "no-store" } });
}
