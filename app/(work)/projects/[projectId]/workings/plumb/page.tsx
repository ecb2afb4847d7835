import type { Metadata } from "next";
import { WorkingSheet, type WorkingPageProps } from "../_parts/working-sheet.tsx";
import { PLUMB } from "./plumb.tsx";

export const metadata: Metadata = { title: "Plumb" };

export default function PlumbPage(props: WorkingPageProps) {
  return <WorkingSheet {...props} calculator={PLUMB} />;
}
