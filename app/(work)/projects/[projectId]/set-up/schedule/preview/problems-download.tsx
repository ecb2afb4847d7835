"use client";

import type { Finding } from "#lib/trade/schedule/table/raw-lift.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { problemsCsv } from "./problems-csv.ts";

export type ProblemsDownloadProps = { readonly refused: readonly Finding[]; readonly warnings: readonly Finding[] };

/** Saves everything that was found as a file, to go through with whoever made the schedule. */
export function ProblemsDownload({ refused, warnings }: ProblemsDownloadProps) {
  const save = () => {
    const url = URL.createObjectURL(new Blob([problemsCsv(refused, warnings)], { type: "text/csv;charset=utf-8" }));
    const link = document.createElement("a");
    link.href = url;
    link.download = "schedule-problems.csv";
    link.click();
    setTimeout(() => URL.revokeObjectURL(url), 10_000);
  };
  return <div><Button onPress={save}>Save all {refused.length + warnings.length} findings as CSV</Button></div>;
}
