import type { Import, Source } from "./source-tree.ts";

/** Who may import whom: the longest matching folder counts, on both sides. Anything may import from its own folder. */
export const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  "lib/kernel": [],
  "lib/access": ["lib/kernel"],
  "lib/trade/engineering": ["lib/kernel"],
  "lib/trade/shutter": ["lib/kernel", "lib/trade/engineering"],
  "lib/trade/schedule": ["lib/kernel"],
  "lib/trade/progress": ["lib/kernel"],
  "lib/trade/planning": ["lib/kernel"],
  "lib/trade/gear": ["lib/kernel"],
  "lib/trade/hire": ["lib/kernel"],
  "lib/solver": ["lib/kernel", "lib/trade/planning", "lib/trade/engineering"],
  "lib/contracts": ["lib/kernel", "lib/access", "lib/trade/engineering", "lib/trade/shutter", "lib/trade/schedule", "lib/trade/progress", "lib/trade/gear", "lib/trade/hire"],
  "lib/server/platform": ["lib/kernel", "prisma"],
  "lib/server/gate": ["lib/kernel", "lib/access", "lib/contracts", "lib/server/platform"],
  "lib/server": [
    "lib/kernel", "lib/access", "lib/contracts", "lib/trade/engineering", "lib/trade/shutter", "lib/trade/schedule", "lib/trade/progress",
    "lib/trade/planning", "lib/trade/gear", "lib/trade/hire", "lib/solver", "lib/server/gate", "lib/server/platform", "prisma",
  ],
  "lib/launch": ["lib/kernel", "lib/contracts", "lib/server", "lib/server/gate", "lib/server/platform", "lib/trade/engineering", "prisma"],
  "app": ["lib/kernel", "lib/access", "lib/contracts", "lib/trade/engineering", "lib/trade/shutter", "lib/trade/schedule", "lib/trade/progress", "lib/trade/planning", "lib/trade/gear", "lib/trade/hire", "lib/server", "lib/server/gate"],
  "proxy.ts": [],
  "prisma": [],
  "tests": ["lib", "app", "prisma"],
};

const folders = Object.keys(MAY_IMPORT);
const isBelow = (path: string, folder: string): boolean => path === folder || path.startsWith(`${folder}/`);
export const rowOf = (path: string): string | undefined =>
  folders.filter((folder) => isBelow(path, folder)).sort((a, b) => b.length - a.length)[0];

export function arrowBreaches(sources: readonly Source[]): string[] {
  return sources.flatMap(({ path, imports }) => {
    const row = rowOf(path);
    if (row === undefined) return [`${path} stands in no folder of the table`];
    if (row === "tests") return [];
    const allowed = [row, ...(MAY_IMPORT[row] ?? [])];
    return imports.filter(({ to, isOurs }) => isOurs && !allowed.includes(rowOf(to) ?? "")).map(({ to }) => `${path} → ${to}`);
  });
}

/** Where a file of ours that an import names may be brought in from. */
type Gateway = { readonly what: string; readonly isGuarded: (to: string, sources: ReadonlyMap<string, Source>) => boolean; readonly mayEnter: (from: string) => boolean };

const isUseCase = (source: Source | undefined): boolean => source !== undefined && /\b(company|project|door)UseCase\(/.test(source.text.replace(/function \w+UseCase/g, ""));
const areaOf = (path: string): string => path.split("/").slice(0, 3).join("/");
const isArea = (path: string): boolean => isBelow(path, "lib/server") && !["lib/server/gate", "lib/server/platform"].includes(areaOf(path));
/** Enters the gate through a use case at every step, without being one. */
const FOLLOWS = "lib/server/progress/follow-project.ts";

const GATEWAYS: readonly Gateway[] = [
  {
    what: "only the database's own file and the stores see the generated client",
    isGuarded: (to) => isBelow(to, "prisma/generated"),
    mayEnter: (from) => from === "lib/server/platform/db.ts" || /^lib\/server\/.*store\.ts$/.test(from),
  },
  {
    what: "from the server, pages see use cases and the session",
    isGuarded: (to, sources) => isBelow(to, "lib/server") && to !== FOLLOWS && !/^lib\/server\/gate\/(session|caller)\.ts$/.test(to) && !isUseCase(sources.get(to)),
    mayEnter: (from) => !isBelow(from, "app"),
  },
];

export function gatewayBreaches(sources: readonly Source[]): string[] {
  const byPath = new Map(sources.map((source) => [source.path, source]));
  return sources.filter(({ path }) => !isBelow(path, "tests")).flatMap(({ path, imports }) =>
    GATEWAYS.flatMap(({ what, isGuarded, mayEnter }) =>
      mayEnter(path) ? [] : imports.filter(({ to, isOurs }) => isOurs && isGuarded(to, byPath)).map(({ to }) => `${what}: ${path} → ${to}`)));
}

/** Areas share what they read, never what they do. */
export function areaBreaches(sources: readonly Source[]): string[] {
  const byPath = new Map(sources.map((source) => [source.path, source]));
  return sources.filter(({ path }) => isArea(path)).flatMap(({ path, imports }) =>
    imports.filter(({ to }) => isArea(to) && areaOf(to) !== areaOf(path) && isUseCase(byPath.get(to))).map(({ to }) => `${path} → ${to}`));
}

const says = (source: Source, directive: string): boolean => new RegExp(`^\\s*["']${directive}["']`).test(source.text);

/**
 * From every client part along what it imports; a server action is called over the network, so it ends the way, and a
 * type is gone by then. A client part itself does not even name a type of the server: what crosses has its own name in app.
 */
export function clientBreaches(sources: readonly Source[]): string[] {
  const byPath = new Map(sources.map((source) => [source.path, source]));
  const clients = sources.filter((source) => says(source, "use client"));
  const named = clients.flatMap(({ path, imports }) =>
    imports.filter(({ to, isType }) => isType && isBelow(to, "lib/server")).map(({ to }) => `${path} → ${to}`));
  const reached = new Map<string, string>();
  const open = clients.map((source) => source.path);
  for (const path of open) reached.set(path, path);
  for (let path = open.pop(); path !== undefined; path = open.pop()) {
    const source = byPath.get(path);
    if (!source || says(source, "use server") || isBelow(path, "lib/server")) continue;
    for (const { to, isOurs, isType } of source.imports) {
      if (!isOurs || isType || reached.has(to)) continue;
      reached.set(to, `${reached.get(path)} → ${to}`);
      open.push(to);
    }
  }
  return [...named, ...[...reached].filter(([path]) => isBelow(path, "lib/server")).map(([, way]) => way)];
}

/** In lib not even types go in a circle; a component may hand a part of itself the type of what it holds. */
const counts = (from: string, { isOurs, isType }: Import): boolean => isOurs && (!isType || isBelow(from, "lib"));

export function cycles(sources: readonly Source[]): string[] {
  const byPath = new Map(sources.map((source) => [source.path, source]));
  const done = new Set<string>();
  const found: string[] = [];
  const visit = (path: string, way: readonly string[]): void => {
    if (way.includes(path)) return void found.push([...way.slice(way.indexOf(path)), path].join(" → "));
    if (done.has(path)) return;
    for (const each of byPath.get(path)?.imports ?? []) if (counts(path, each)) visit(each.to, [...way, path]);
    done.add(path);
  };
  for (const { path } of sources) visit(path, []);
  return found;
}
