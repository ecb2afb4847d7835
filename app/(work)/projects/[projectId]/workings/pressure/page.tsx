import type { Metadata } from "next";
import { WorkingSheet, type WorkingPageProps } from "../_parts/working-sheet.tsx";
import { PRESSURE } from "./pressure.tsx";

export const metadata: Metadata = { title: "Concrete pressure" };

export default function PressurePage(props: WorkingPageProps) {
  return <WorkingSheet {...props} calculator={PRESSURE} />;
}
