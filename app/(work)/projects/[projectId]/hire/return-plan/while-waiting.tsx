"use client";

import { useEffect } from "react";
import { useRouter } from "next/navigation";
import { Notice } from "#app/_ui/message/notice.tsx";

const EVERY_MS = 2000;

/** Asks again until the worker has put its plan there. */
export function WhileWaiting() {
  const router = useRouter();
  useEffect(() => {
    const again = setInterval(() => router.refresh(), EVERY_MS);
    return () => clearInterval(again);
  }, [router]);
  return <Notice title="The plan is being computed.">Usually a few seconds, a minute at most. This page shows it by itself; you may also leave and come back.</Notice>;
}
