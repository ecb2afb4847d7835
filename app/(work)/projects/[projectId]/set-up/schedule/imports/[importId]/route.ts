import { currentCaller } from "#lib/server/gate/session.ts";
import { getImportFile } from "#lib/server/columns/get-import-file.ts";
import { answerFailure } from "#app/api/answer-failure.ts";

type Context = { readonly params: Promise<{ projectId: string; importId: string }> };

/** A file as somebody uploaded it: always to be saved, never to be shown, since nobody vouches for what is in it. */
export async function GET(_request: Request, { params }: Context): Promise<Response> {
  const found = await getImportFile(await currentCaller(), await params);
  if (!found.ok) return answerFailure(found.failure);
  const { fileName, file } = found.value;
  return new Response(new Blob([file]), {
    headers: {
      "content-type": "application/octet-stream",
      "content-disposition": `attachment; filename*=UTF-8''${encodeURIComponent(fileName).replace(/['()*]/g, (sign) => `%${sign.charCodeAt(0).toString(16)}`)}`,
      "cache-control": "private, no-store",
    },
  });
}
