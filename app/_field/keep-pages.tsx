"use client";

import { usePathname, useSearchParams } from "next/navigation";
import { useEffect } from "react";
import { WORKER } from "./kept-pages.ts";

const isOffered = (): boolean => process.env.NODE_ENV === "production" && "serviceWorker" in navigator;

/** Whoever is not controlled yet is heard as soon as the worker is ready. */
function ask(pages: readonly string[]): void {
  void navigator.serviceWorker.ready.then(({ active }) => active?.postMessage({ kind: "keep", pages })).catch(() => undefined);
}

/** Keeps copies of the pages a crew needs, so that they open without reception. `others` are kept along with the page shown. */
export function KeepPages({ others }: { readonly others: readonly string[] }) {
  const path = usePathname();
  const search = useSearchParams().toString();
  const shown = search === "" ? path : `${path}?${search}`;
  const along = others.join(" ");
  useEffect(() => {
    if (isOffered()) void navigator.serviceWorker.register(WORKER, { scope: "/", updateViaCache: "none" }).catch(() => undefined);
  }, []);
  useEffect(() => {
    if (!isOffered()) return;
    const pages = [shown, ...along.split(" ")];
    ask(pages);
    const onHide = () => { if (document.visibilityState === "hidden") ask(pages); };
    document.addEventListener("visibilitychange", onHide);
    return () => document.removeEventListener("visibilitychange", onHide);
  }, [shown, along]);
  return null;
}
