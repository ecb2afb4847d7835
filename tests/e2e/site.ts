import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { expect, test as plain, type Browser, type BrowserContext, type BrowserContextOptions, type Locator, type Page } from "@playwright/test";

/** The demo's people; the scenario is invented. */
export const PEOPLE = {
  owner: "maren@quillback.example",
  "leading hand": "tavita@quillback.example",
  office: "ines@quillback.example",
} as const;
const PASSWORD = "string-line-and-wedge";
export const WHARF = "Larkmere Wharf, Building B";
export const CLINIC = "Osierfield Clinic";

/** Noise of the browser itself, not of the product: a request that fails because the journey cut the connection. */
const EXPECTED = [/net::ERR_INTERNET_DISCONNECTED/, /status of 4\d\d/, /Failed to fetch/];

/** A journey fails on any error the page prints that it did not bring about itself. */
export const test = plain.extend<{ heard: string[] }>({
  heard: [
    async ({}, use) => {
      const heard: string[] = [];
      await use(heard);
      expect(heard, "errors printed by the page").toEqual([]);
    },
    { auto: true },
  ],
});

export function listen(page: Page, heard: string[]): void {
  page.on("pageerror", (error) => heard.push(String(error)));
  page.on("console", (message) => {
    if (message.type() === "error" && !EXPECTED.some((noise) => noise.test(message.text()))) heard.push(message.text());
  });
}

const PHONE_SIZE = { width: 390, height: 844 };
const DESK_SIZE = { width: 1280, height: 720 };
export const PHONE: BrowserContextOptions = { viewport: PHONE_SIZE, hasTouch: true, isMobile: true };

export async function signInOn(page: Page, email: string, password: string): Promise<void> {
  await page.goto("/sign-in");
  await page.getByLabel("E-mail").fill(email);
  await page.getByLabel("Password").fill(password);
  await page.getByRole("button", { name: "Sign in" }).click();
}

type Kept = Awaited<ReturnType<BrowserContext["storageState"]>>;
/** Who has come through the door once in this process keeps the key. */
const keys = new Map<string, Kept>();

/** A browser of one's own, signed in. */
export async function as(who: keyof typeof PEOPLE, browser: Browser, heard: string[], options: BrowserContextOptions = {}): Promise<Page> {
  const key = keys.get(who);
  const page = await (await browser.newContext({ ...options, ...(key ? { storageState: key } : {}) })).newPage();
  listen(page, heard);
  if (key) await page.goto("/projects");
  else await signInOn(page, PEOPLE[who], PASSWORD);
  await expect(page.getByRole("heading", { name: "Projects", level: 1 })).toBeVisible();
  if (!key) keys.set(who, await page.context().storageState());
  return page;
}

export async function openProject(page: Page, name = WHARF): Promise<string> {
  await page.getByRole("link", { name }).click();
  await expect(page.getByRole("heading", { name: "Today", level: 1 })).toBeVisible();
  return new URL(page.url()).pathname.replace(/\/today.*$/, "");
}

/** The gather list of one column; answers its line of wedges. */
export async function openGatherList(page: Page, project: string, column: Locator): Promise<Locator> {
  await page.goto(`${project}/gear/gather`);
  await column.click();
  await page.getByRole("button", { name: "Make the list for 1 column" }).click();
  const wedges = page.getByRole("group", { name: /^\d+ × Wedge$/ });
  await expect(wedges).toBeVisible();
  return wedges;
}

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
type Violation = { id: string; impact: string; nodes: { target: string[] }[] };

/**
 * WCAG 2.2 A and AA as far as axe can tell. What stays in sight lies over what is scrolled under it; it is measured in its own place.
 * Left out: what was said aloud a moment ago, which names a button that may have gone since.
 */
export async function expectAccessible(page: Page): Promise<void> {
  await page.evaluate(axe);
  const violations = await page.evaluate(async () => {
    const run = (window as unknown as { axe: { run(context: object, options: object): Promise<{ violations: Violation[] }> } }).axe.run;
    const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
    const docked = [...document.querySelectorAll<HTMLElement>("body *")].filter((element) => ["fixed", "sticky"].includes(getComputedStyle(element).position));
    const were = docked.map((element) => element.style.position);
    for (const element of docked) element.style.position = "static";
    const found = await run({ exclude: [["[data-live-announcer]"]] }, { runOnly: { type: "tag", values: tags } });
    docked.forEach((element, index) => (element.style.position = were[index] ?? ""));
    return found.violations;
  });
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(" ")).slice(0, 3).join(" | ")}`)).toEqual([]);
}

/** Each page as a phone shows it, then drawn out to a desk's width: one opening serves both. */
export async function expectEachAccessible(page: Page, paths: readonly string[]): Promise<void> {
  for (const path of paths) {
    await page.setViewportSize(PHONE_SIZE);
    await page.goto(path);
    for (const size of [PHONE_SIZE, DESK_SIZE]) {
      await page.setViewportSize(size);
      await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
      await expectAccessible(page);
      const overflow = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
      expect(overflow, `${path} scrolls sideways ${size.width} px wide`).toBeLessThanOrEqual(0);
    }
  }
}
