"use client";

import { useEffect, useTransition } from "react";
import { useRouter } from "next/navigation";
import { Notice } from "#app/_ui/message/notice.tsx";

const EVERY_MS = 2000;

/** Asks again until the worker has put its plan there. */
export function WhileWaiting() {
  const router = useRouter();
  const [isAsking, startAsking] = useTransition();
  useEffect(() => {
    // The next question waits for the answer to this one: asked again meanwhile, it would never come.
    if (isAsking) return undefined;
    const again = setTimeout(() => startAsking(() => router.refresh()), EVERY_MS);
    return () => clearTimeout(again);
  }, [isAsking, router]);
  return <Notice title="The plan is being computed.">Usually a few seconds, a minute at most. This page shows it by itself; you may also leave and come back.</Notice>;
}
