// Keeps copies of the pages a crew needs without reception, and the parts they are made of. The network always comes
// first; a copy is shown only when it cannot be reached. Copies are thrown away when somebody signs out or in.
// The names are shared with app/_field/kept-pages.ts.
const PAGES = "shutterwright-pages";
const PARTS = "shutterwright-parts";
const MOST_PAGES = 60;
const MOST_PARTS = 400;
/** Asked for by the browser itself, on any page. */
const SIGNS = ["/icons/column.svg", "/icons/column-192.png"];
const PATIENCE_MS = 7000;
const FRESH_MS = 60000;

const isKeptPage = (url) => /^\/projects\/[^/]+\/(today|columns|columns\/[^/]+|gear\/gather|gear\/count|hire\/dockets\/new)$/.test(url.pathname) || url.pathname === "/projects";
/** For other columns it is another list, for another kind of docket another form: a copy of one does not stand in for it. */
const isOneOfMany = (url) => /\/(gear\/gather|hire\/dockets\/new)$/.test(url.pathname);
const isPart = (url) => url.pathname.startsWith("/_next/static/") || /^\/(icon|manifest|icons\/)/.test(url.pathname);
const isDoor = (url) => /^\/api\/auth\/(signout|callback)/.test(url.pathname);

self.addEventListener("install", (event) => {
  self.skipWaiting();
  event.waitUntil(caches.open(PARTS).then((cache) => cache.addAll(SIGNS)));
});
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));

self.addEventListener("message", (event) => {
  if (event.data?.kind === "keep") event.waitUntil(keepPages(event.data.pages));
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (url.origin !== self.location.origin) return;
  if (request.method === "POST" && isDoor(url)) event.waitUntil(caches.delete(PAGES));
  if (request.method !== "GET") return;
  if (isPart(url)) event.respondWith(answerPart(request));
  else if (request.mode === "navigate") event.respondWith(answerPage(event, url));
});

async function trim(cache, most) {
  const keys = await cache.keys();
  await Promise.all(keys.slice(0, Math.max(0, keys.length - most)).map((key) => cache.delete(key)));
}

const isLasting = (response) => (response.headers.get("cache-control") ?? "").includes("immutable");

async function answerPart(request) {
  const cache = await caches.open(PARTS);
  const kept = await cache.match(request);
  if (kept && isLasting(kept)) return kept;
  try {
    const response = await fetch(request);
    if (response.ok) await cache.put(request, response.clone());
    return response;
  } catch (error) {
    if (kept) return kept;
    throw error;
  }
}

async function answerPage(event, url) {
  const cache = await caches.open(PAGES);
  const kept = (await cache.match(url.href)) ?? (isOneOfMany(url) ? undefined : await cache.match(url.href, { ignoreSearch: true }));
  try {
    const response = await fetchPage(event.request, kept !== undefined);
    // Only a page that was asked for by address and answered as itself is a page; a way to the sign-in is not.
    if (response.ok && isKeptPage(url)) event.waitUntil(storePage(url, response.clone()));
    if (response.ok && url.pathname === "/sign-in") event.waitUntil(caches.delete(PAGES));
    return response;
  } catch {
    return kept ?? listKept(cache);
  }
}

/** With a copy at hand a slow network is not waited for; the time counts to the beginning of the answer. */
async function fetchPage(request, isImpatient) {
  const giveUp = new AbortController();
  const timer = isImpatient ? setTimeout(() => giveUp.abort(), PATIENCE_MS) : undefined;
  return fetch(request, { signal: giveUp.signal }).finally(() => clearTimeout(timer));
}

/** What is asked for and not yet come, each once: pages ask again whenever another is opened. */
const wanted = new Map();
let lastKept = Promise.resolve();

/** One after another, so that keeping copies never holds up the page that is looked at. */
function keepPages(pages) {
  for (const page of pages) {
    const url = new URL(page, self.location.origin);
    if (wanted.has(url.href)) continue;
    lastKept = lastKept.then(() => keepPage(url)).catch(() => undefined).finally(() => wanted.delete(url.href));
    wanted.set(url.href, lastKept);
  }
  return lastKept;
}

async function keepPage(url) {
  if (url.origin !== self.location.origin || !isKeptPage(url)) return;
  const cache = await caches.open(PAGES);
  const kept = await cache.match(url.href);
  if (kept && Date.now() - Date.parse(kept.headers.get("date") ?? "") < FRESH_MS) return;
  try {
    const response = await fetch(url.href, { credentials: "same-origin", redirect: "error", headers: { accept: "text/html" } });
    if (response.ok) await storePage(url, response);
  } catch {
    // Without reception the copy that is there stays.
  }
}

/** Stores a page and sees that the parts it names are kept as well; those loaded before this worker was there are not yet. */
async function storePage(url, response) {
  const cache = await caches.open(PAGES);
  const text = await response.clone().text();
  await cache.delete(url.href);
  await cache.put(url.href, response);
  await trim(cache, MOST_PAGES);
  const parts = await caches.open(PARTS);
  const named = new Set(text.match(/\/_next\/static\/[^"'\\\s<>)]+/g) ?? []);
  for (const part of named) if (!(await parts.match(part))) await parts.add(part).catch(() => undefined);
  await trim(parts, MOST_PARTS);
}

const escaped = (text) => text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);

/** The page asked for has no copy: which ones have. */
async function listKept(cache) {
  const rows = await Promise.all((await cache.keys()).map(async ({ url }) => {
    const page = await cache.match(url);
    const title = /<title>([^<]*)<\/title>/.exec(await page.text())?.[1] ?? new URL(url).pathname;
    return `<li><a href="${escaped(url)}">${title}</a></li>`;
  }));
  const list = rows.length === 0 ? "" : `<p>These pages were kept on this phone:</p><ul>${rows.reverse().join("")}</ul>`;
  const style = "body{font:1.1rem system-ui,sans-serif;background:#fbfaf6;color:#17201d;margin:0;padding:1.5rem;max-width:40rem}"
    + "a{display:block;border:2px solid #17201d;background:#fff;color:#12493d;padding:1rem;margin:.5rem 0;font-weight:600}ul{list-style:none;padding:0}";
  const body = `<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width,initial-scale=1"><title>No reception</title><style>${style}</style>`
    + `<main><h1>No reception</h1><p>This page has not been opened on this phone before. What you recorded is saved and is sent once there is reception.</p>${list}</main></html>`;
  return new Response(body, { status: 503, headers: { "content-type": "text/html; charset=utf-8" } });
}
