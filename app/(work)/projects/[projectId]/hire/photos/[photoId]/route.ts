import { currentCaller } from "#lib/server/gate/session.ts";
import { getPhoto } from "#lib/server/hire/photos.ts";
import { answerFailure } from "#app/api/answer-failure.ts";

type Context = { readonly params: Promise<{ projectId: string; photoId: string }> };

/** A photo never changes, so a browser may keep it; only for who may see it. */
export async function GET(_request: Request, { params }: Context): Promise<Response> {
  const found = await getPhoto(await currentCaller(), await params);
  if (!found.ok) return answerFailure(found.failure);
  return new Response(Uint8Array.from(found.value.bytes), { headers: { "content-type": found.value.contentType, "cache-control": "private, max-age=86400, immutable" } });
}
