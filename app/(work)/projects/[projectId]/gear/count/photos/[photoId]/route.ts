import { currentCaller } from "#lib/server/gate/session.ts";
import { getCountPhoto } from "#lib/server/gear/counts/count-photos.ts";
import { answerFailure } from "#app/api/answer-failure.ts";

type Context = { readonly params: Promise<{ projectId: string; photoId: string }> };

/** A photo never changes, so a browser may keep it; only for who may see it. */
export async function GET(_request: Request, { params }: Context): Promise<Response> {
  const found = await getCountPhoto(await currentCaller(), await params);
  if (!found.ok) return answerFailure(found.failure);
  return new Response(Uint8Array.from(found.value.bytes), { headers: { "content-type": found.value.contentType, "cache-control": "private, max-age=86400, immutable" } });
}
