/** The names and the address are the service worker's; the two must agree. */
const PAGES = "shutterwright-pages";
export const WORKER = "/service-worker.js";

/** When the copy of a page on this phone was made, by the server's clock; undefined when there is none. */
export async function whenPageWasKept(href: string): Promise<number | undefined> {
  if (typeof caches === "undefined") return undefined;
  const cache = await caches.open(PAGES);
  const found = (await cache.match(href)) ?? (await cache.match(href, { ignoreSearch: true }));
  const at = Date.parse(found?.headers.get("date") ?? "");
  return Number.isNaN(at) ? undefined : at;
}
