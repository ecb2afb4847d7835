"use client";

import "./globals.css";
import type { ErrorPageProps } from "./error.tsx";

/** Stands in when even the frame around the pages failed, so it is made of plain parts. */
export default function GlobalErrorPage({ error }: ErrorPageProps) {
  return (
    <html lang="en">
      <body className="bg-paper p-6 text-ink">
        <title>Something went wrong · Shutterwright</title>
        <main>
          <h1 className="text-2xl">Something went wrong on our side</h1>
          <p className="mt-3">
            Load the page again; if it comes back, tell whoever looks after the server
            {error.digest ? <> this number: <strong className="font-mono">{error.digest}</strong></> : null}.
          </p>
          <p className="mt-3"><a href="/">Start again</a></p>
        </main>
      </body>
    </html>
  );
}
