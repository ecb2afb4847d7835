export type Choice = { readonly projectId: string; readonly levelId?: string; readonly sets: { size: string; count: number }[] | null };

const PREFIX = "sets.";

/** From the address: the level, and under `sets.<size>` how many form sets of that size; null when none is named. */
export function readChoice(projectId: string, query: Readonly<Record<string, string | string[] | undefined>>): Choice {
  const { level } = query;
  const sets = Object.entries(query).flatMap(([name, value]) =>
    name.startsWith(PREFIX) && typeof value === "string" ? [{ size: name.slice(PREFIX.length), count: value.trim() === "" ? 0 : Number(value) }] : []);
  return { projectId, ...(typeof level === "string" ? { levelId: level } : {}), sets: sets.length > 0 ? sets : null };
}
