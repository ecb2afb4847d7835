import { afterEach, describe, expect, it, vi } from "vitest";
import type { KeptItem, KeptMove } from "#app/_field/outbox/kept-item.ts";
import { sendBatch } from "#app/_field/outbox/send-batch.ts";

const event: KeptMove = { id: "m1", kind: "taken-back", movementId: "m0", happenedAt: "2031-04-17T06:30:00Z", reason: "Another column" };
const item: KeptItem = {
  place: 1, event, about: "", projectId: "wharf", personId: "ari", personName: "Ari", madeAt: 0, standing: "waiting", tries: 1, stumbles: 0, outcome: null,
  findings: [], failure: null, answeredAt: null,
};
const posted: { address: string; message: unknown }[] = [];
/** Sends the entry to a server that answers so, or where nothing comes back. */
async function send(answer: Response | null, hasReception = true) {
  posted.length = 0;
  vi.stubGlobal("navigator", { onLine: hasReception });
  vi.stubGlobal("fetch", (address: string, { body }: { body: string }) => {
    posted.push({ address, message: JSON.parse(body) });
    return answer ? Promise.resolve(answer) : Promise.reject(new TypeError("nothing came back"));
  });
  return sendBatch({ projectId: "wharf", saved: false, items: [item] }, "ari");
}
afterEach(() => vi.unstubAllGlobals());

describe("sending an entry that moves gear", () => {
  it("says whose it is, and hears when the gear was moved", async () => {
    expect(await send(Response.json({ movementId: "m1", takenAt: "2031-04-17T06:31:00.000Z" }))).toEqual({ kind: "moved", takenAt: "2031-04-17T06:31:00.000Z" });
    expect(posted).toEqual([{ address: "/api/gear-moves", message: { projectId: "wharf", personId: "ari", entry: event } }]);
    expect(await send(Response.json({ movementId: "m1" }))).toEqual({ kind: "moved", takenAt: null });
  });
  it("hears the reason of a refusal, and that somebody else is signed in", async () => {
    const failure = { kind: "rule", code: "gear-not-there", values: { item: "Wedge" } };
    expect(await send(Response.json({ failure }, { status: 422 }))).toEqual({ kind: "refused", failure });
    expect(await send(Response.json({ failure: { kind: "not-signed-in" } }, { status: 401 }))).toEqual({ kind: "signed-out" });
  });
  it("takes for the server's word only what is: not the sign-in page of a network, nor what stands in front of the server", async () => {
    expect(await send(new Response("<html>Sign in to the site network</html>"))).toEqual({ kind: "unreachable" });
    expect(await send(Response.json({ welcome: true }))).toEqual({ kind: "unreachable" });
    expect(await send(new Response(null, { status: 503 }))).toEqual({ kind: "unreachable" });
    expect(await send(new Response(null, { status: 500 }))).toEqual({ kind: "stumbled" });
  });
  it("knows that nothing left the phone only where the phone has no reception by its own account", async () => {
    expect(await send(null, false)).toEqual({ kind: "never-left" });
    expect(await send(null, true)).toEqual({ kind: "unreachable" });
  });
});
