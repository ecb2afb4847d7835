"use client";

import { Button } from "./button.tsx";

/** Prints the page as it stands; the browser's own command does the same. */
export function PrintButton() {
  return <Button onPress={() => window.print()}>Print</Button>;
}
