"use client";

import { useState } from "react";

/** The list from before as long as the same things are in it, so that what is made of it stays as well. */
export function useSteady<Item>(list: readonly Item[]): readonly Item[] {
  const [kept, setKept] = useState(list);
  if (kept === list) return kept;
  if (kept.length === list.length && kept.every((item, index) => item === list[index])) return kept;
  setKept(list);
  return list;
}
