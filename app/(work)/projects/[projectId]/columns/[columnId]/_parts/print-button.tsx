"use client";

import { Button } from "#app/_ui/control/button.tsx";

export function PrintButton() {
  return <Button onPress={() => window.print()}>Print</Button>;
}
