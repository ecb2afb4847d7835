import type { Metadata } from "next";
import { WorkingSheet, type WorkingPageProps } from "../_parts/working-sheet.tsx";
import { BACKING } from "./backing.tsx";

export const metadata: Metadata = { title: "Backing timber" };

export default function BackingPage(props: WorkingPageProps) {
  return <WorkingSheet {...props} calculator={BACKING} />;
}
