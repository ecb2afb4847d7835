import type { Metadata } from "next";
import { WorkingSheet, type WorkingPageProps } from "../_parts/working-sheet.tsx";
import { SHEATHING } from "./sheathing.tsx";

export const metadata: Metadata = { title: "Sheathing" };

export default function SheathingPage(props: WorkingPageProps) {
  return <WorkingSheet {...props} calculator={SHEATHING} />;
}
