import { renderToBuffer, type DocumentProps } from "@react-pdf/renderer";
import type { ReactElement } from "react";

/** A document of ours as a file to save; made anew each time, so that it is never older than the books. */
export async function answerPdf(paper: ReactElement, name: string): Promise<Response> {
  const file = await renderToBuffer(paper as ReactElement<DocumentProps>);
  return new Response(Uint8Array.from(file), {
    headers: { "content-type": "application/pdf", "content-disposition": `attachment; filename="${name.replace(/[^\w.-]+/g, "-")}.pdf"`, "cache-control": "no-store" },
  });
}
