/** Every address of the product, built in one place. */
export type SetUpPart = "levels" | "grid" | "marks" | "columns" | "schedule" | "shutter" | "pour" | "stages" | "stock";
export type HirePart = "column-gear" | "dockets" | "dockets/new" | "terms" | "terms/new" | "invoices" | "invoices/new" | "table" | "statement";

export type WorkingName = "pressure" | "sheathing" | "backing" | "clamp-layout" | "strip-time" | "plumb";

type Query = Readonly<Record<string, string | number | undefined>>;

function withQuery(path: string, query: Query = {}): string {
  const given = Object.entries(query).flatMap(([name, value]) => (value === undefined ? [] : [[name, String(value)]]));
  return given.length === 0 ? path : `${path}?${new URLSearchParams(given).toString()}`;
}

const project = (projectId: string): string => `/projects/${encodeURIComponent(projectId)}`;

export const paths = {
  signIn: (next?: string, query?: Query) => withQuery("/sign-in", { next, ...query }),
  found: () => "/found",
  invitation: (token: string) => `/invitation/${encodeURIComponent(token)}`,

  home: () => "/",
  projects: () => "/projects",
  newProject: () => "/projects/new",
  clamps: (units?: "metric" | "us") => withQuery("/clamps", { units }),
  people: () => "/people",
  account: () => "/account",

  /** Version 1 of the open API: what a program may rely on changes with the number only. */
  openApi: () => "/api/v1/openapi.json",
  apiWorking: (name: string) => `/api/v1/workings/${name}`,

  project,
  today: (projectId: string, query?: Query) => withQuery(`${project(projectId)}/today`, query),
  columns: (projectId: string, query?: Query) => withQuery(`${project(projectId)}/columns`, query),
  column: (projectId: string, columnId: string, query?: Query) =>
    withQuery(`${project(projectId)}/columns/${encodeURIComponent(columnId)}`, query),
  pours: (projectId: string, query?: Query) => withQuery(`${project(projectId)}/pours`, query),
  workings: (projectId: string) => `${project(projectId)}/workings`,
  working: (projectId: string, name: WorkingName, query?: Query) => withQuery(`${project(projectId)}/workings/${name}`, query),
  cutting: (projectId: string, query?: Query) => withQuery(`${project(projectId)}/gear/cutting`, query),
  reuse: (projectId: string, query?: Query) => withQuery(`${project(projectId)}/gear/reuse`, query),
  hire: (projectId: string, query?: Query) => withQuery(`${project(projectId)}/hire`, query),
  hirePart: (projectId: string, part: HirePart, query?: Query) => withQuery(`${project(projectId)}/hire/${part}`, query),
  hireDocket: (projectId: string, docketId: string) => `${project(projectId)}/hire/dockets/${encodeURIComponent(docketId)}`,
  hireDocketPaper: (projectId: string, docketId: string) => `${project(projectId)}/hire/dockets/${encodeURIComponent(docketId)}/paper`,
  hirePhoto: (projectId: string, photoId: string) => `${project(projectId)}/hire/photos/${encodeURIComponent(photoId)}`,
  hireInvoice: (projectId: string, invoiceId: string, file?: "file" | "letter") =>
    `${project(projectId)}/hire/invoices/${encodeURIComponent(invoiceId)}${file ? `/${file}` : ""}`,
  returnPlan: (projectId: string, query?: Query) => withQuery(`${project(projectId)}/hire/return-plan`, query),
  calendar: (token: string) => `/api/calendar/${encodeURIComponent(token)}.ics`,
  gear: (projectId: string, query?: Query) => withQuery(`${project(projectId)}/gear`, query),
  gearMovements: (projectId: string, query?: Query) => withQuery(`${project(projectId)}/gear/movements`, query),
  gearItems: (projectId: string) => `${project(projectId)}/gear/items`,
  gearItem: (projectId: string, itemId: string) => `${project(projectId)}/gear/items/${encodeURIComponent(itemId)}`,
  gearPanels: (projectId: string, setId?: string) => `${project(projectId)}/gear/panels${setId === undefined ? "" : `#${encodeURIComponent(setId)}`}`,
  gearPanel: (projectId: string, itemId: string) => `${project(projectId)}/gear/panels/${encodeURIComponent(itemId)}`,
  gearCount: (projectId: string) => `${project(projectId)}/gear/count`,
  gearOrders: (projectId: string) => `${project(projectId)}/gear/orders`,
  gearOrder: (projectId: string, orderId: string, part?: "receive") => `${project(projectId)}/gear/orders/${encodeURIComponent(orderId)}${part ? `/${part}` : ""}`,
  orderPart: (projectId: string, part: "new" | "buy" | "table", query?: Query) => withQuery(`${project(projectId)}/gear/orders/${part}`, query),
  countPhoto: (projectId: string, photoId: string) => `${project(projectId)}/gear/count/photos/${encodeURIComponent(photoId)}`,
  gather: (projectId: string, query?: Query) => withQuery(`${project(projectId)}/gear/gather`, query),
  gearLabels: (projectId: string, query?: Query) => withQuery(`${project(projectId)}/gear/labels`, query),
  /** What the code on a label says; labels hang on site for years, so this address stays as it is. */
  label: (kind: "panel" | "set" | "column", projectId: string, id: string) => `/label/${kind}/${encodeURIComponent(projectId)}/${encodeURIComponent(id)}`,
  setUp: (projectId: string) => `${project(projectId)}/set-up`,
  setUpPart: (projectId: string, part: SetUpPart) => `${project(projectId)}/set-up/${part}`,
  scheduleTemplate: (projectId: string) => `${project(projectId)}/set-up/schedule/template`,
  scheduleImport: (projectId: string, importId: string) => `${project(projectId)}/set-up/schedule/imports/${encodeURIComponent(importId)}`,
} as const;

/** Where to go after signing in: a path of ours, or the start when the address asks for anything else. */
export function ownPath(asked: string | undefined): string {
  if (asked === undefined || !/^\/(?![/\\])/.test(asked) || /[\u0000-\u001f\\]/.test(asked)) return paths.home();
  const url = new URL(asked, "http://own.invalid");
  return url.host === "own.invalid" ? `${url.pathname}${url.search}` : paths.home();
}
