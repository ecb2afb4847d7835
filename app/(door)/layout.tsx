import type { ReactNode } from "react";

export const dynamic = "force-dynamic";

export default function DoorLayout({ children }: { readonly children: ReactNode }) {
  return (
    <main id="content" tabIndex={-1} className="mx-auto flex min-h-dvh w-full max-w-lg flex-col justify-center px-4 py-8 outline-none">
      <p className="border-2 border-b-0 border-ink bg-ink px-5 py-3 font-semibold text-white">Shutterwright</p>
      <div className="border-2 border-ink bg-sheet p-5 sm:p-6">{children}</div>
    </main>
  );
}
