import { redirect } from "next/navigation";
import { paths } from "#app/paths.ts";

export default function HomePage() {
  redirect(paths.projects());
}
