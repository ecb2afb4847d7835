import type { Metadata } from "next";
import { WorkingSheet, type WorkingPageProps } from "../_parts/working-sheet.tsx";
import { CLAMP_LAYOUT } from "./clamp-layout.tsx";

export const metadata: Metadata = { title: "Clamp layout" };

export default function ClampLayoutPage(props: WorkingPageProps) {
  return <WorkingSheet {...props} calculator={CLAMP_LAYOUT} />;
}
