import "server-only";

type Window = { readonly until: number; readonly count: number };
const MANY = 1_000;

/**
 * So many turns each in a window that begins with the first, counted in this process. Answers the whole seconds until the
 * next window where there is none left, else 0.
 */
export function createTurns({ most, windowMs, nowMs }: { readonly most: number; readonly windowMs: number; readonly nowMs: () => number }): (who: string) => number {
  const windows = new Map<string, Window>();
  const forgetOld = (now: number): void => {
    for (const [who, { until }] of windows) if (until <= now) windows.delete(who);
  };
  return (who) => {
    const now = nowMs();
    if (windows.size >= MANY) forgetOld(now);
    const open = windows.get(who);
    const window = open && open.until > now ? open : { until: now + windowMs, count: 0 };
    if (window.count >= most) return Math.ceil((window.until - now) / 1_000);
    windows.set(who, { ...window, count: window.count + 1 });
    return 0;
  };
}
