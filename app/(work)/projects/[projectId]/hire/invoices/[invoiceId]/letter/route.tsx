import { currentCaller } from "#lib/server/gate/session.ts";
import { getInvoice, type InvoicePage } from "#lib/server/hire/invoices.ts";
import { getPhoto } from "#lib/server/hire/photos.ts";
import { answerFailure } from "#app/api/answer-failure.ts";
import { ownAccount } from "../../../../../../own-account.ts";
import { evidenceFor } from "../../../_parts/evidence.ts";
import { answerPdf } from "../../../_papers/answer-pdf.ts";
import { QueryLetter, type LetterPhoto } from "../../../_papers/query-letter.tsx";

type Context = { readonly params: Promise<{ projectId: string; invoiceId: string }> };
const MOST_PHOTOS = 8;

/** Photos of the dockets in question that a PDF can hold. */
async function photosFor(page: InvoicePage): Promise<LetterPhoto[]> {
  const groups = page.groups.filter(({ key }) => page.invoice.queries.some(({ groupKey }) => groupKey === key));
  const dockets = [...new Set(groups.flatMap((group) => evidenceFor(group, page.dockets, page.invoice.to)))];
  const wanted = dockets.flatMap(({ number, photos }) => photos.map((photo) => ({ ...photo, docket: number }))).slice(0, MOST_PHOTOS);
  const caller = await currentCaller();
  const found: LetterPhoto[] = [];
  for (const { id, takenAt, docket } of wanted) {
    const photo = await getPhoto(caller, { projectId: page.project.id, photoId: id });
    if (!photo.ok || photo.value.contentType === "image/webp") continue;
    found.push({ docket, takenAt, format: photo.value.contentType === "image/png" ? "png" : "jpg", data: Buffer.from(photo.value.bytes) });
  }
  return found;
}

export async function GET(_request: Request, { params }: Context): Promise<Response> {
  const [answer, account] = await Promise.all([getInvoice(await currentCaller(), await params), ownAccount()]);
  if (!answer.ok) return answerFailure(answer.failure);
  const letter = <QueryLetter given={answer.value} from={account.ok ? account.value.companyName : ""} photos={await photosFor(answer.value)} />;
  return answerPdf(letter, `query-${answer.value.invoice.number}`);
}
