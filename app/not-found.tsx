import type { Metadata } from "next";
import { connection } from "next/server";
import { NothingHere } from "./_ui/page/nothing-here.tsx";

export const metadata: Metadata = { title: "Not found" };

export default async function NotFoundPage() {
  // Made for each request, because scripts run only under a word that changes with every answer.
  await connection();
  return <NothingHere />;
}
