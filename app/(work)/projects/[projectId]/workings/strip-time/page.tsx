import type { Metadata } from "next";
import { WorkingSheet, type WorkingPageProps } from "../_parts/working-sheet.tsx";
import { STRIP_TIME } from "./strip-time.tsx";

export const metadata: Metadata = { title: "Strip time" };

export default function StripTimePage(props: WorkingPageProps) {
  return <WorkingSheet {...props} calculator={STRIP_TIME} />;
}
