import type { Metadata, Viewport } from "next";
import type { ReactNode } from "react";
import "./globals.css";
import { LinkRouter } from "#app/_ui/page/link-router.tsx";

export const metadata: Metadata = {
  title: { default: "Shutterwright", template: "%s · Shutterwright" },
  description: "Plans, checks and records the boxing, casting and stripping of concrete columns.",
  icons: { icon: { url: "/icons/column.svg", type: "image/svg+xml" } },
  formatDetection: { telephone: false, date: false, address: false, email: false },
};

export const viewport: Viewport = {
  width: "device-width",
  initialScale: 1,
  viewportFit: "cover",
  themeColor: "#fbfaf6",
};

export default function RootLayout({ children }: { readonly children: ReactNode }) {
  return (
    <html lang="en">
      <body className="min-h-dvh bg-paper text-ink antialiased">
        <a
          href="#content"
          className="no-print sr-only focus:not-sr-only focus:fixed focus:left-2 focus:top-2 focus:z-50 focus:border-2 focus:border-ink focus:bg-sheet focus:px-4 focus:py-3"
        >
          Skip to the content
        </a>
        <LinkRouter>{children}</LinkRouter>
      </body>
    </html>
  );
}
