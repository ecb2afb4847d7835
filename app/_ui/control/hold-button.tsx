"use client";

import { useEffect, useRef, useState } from "react";
import type { PressEvent } from "react-aria-components";
import { Button, type ButtonProps } from "./button.tsx";

export type HoldButtonProps = Omit<ButtonProps, "onPress" | "onPressStart" | "onPressEnd"> & {
  readonly onHeld: () => void;
  /** Pressed by keyboard or screen reader, or let go too early. */
  readonly onAsk: () => void;
};

const HOLD_MS = 900;

/** A button that acts only after it was held down; the bar along its foot shows how long still. */
export function HoldButton({ onHeld, onAsk, children, ...rest }: HoldButtonProps) {
  const [holding, setHolding] = useState(false);
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const held = useRef(false);
  useEffect(() => () => clearTimeout(timer.current), []);

  const start = (event: PressEvent) => {
    if (event.pointerType === "keyboard" || event.pointerType === "virtual") return;
    held.current = false;
    setHolding(true);
    timer.current = setTimeout(() => {
      held.current = true;
      setHolding(false);
      onHeld();
    }, HOLD_MS);
  };
  const end = () => {
    clearTimeout(timer.current);
    setHolding(false);
  };

  return (
    <Button {...rest} onPressStart={start} onPressEnd={end} onPress={() => { if (!held.current) onAsk(); held.current = false; }}>
      <span className="relative">
        {children}
        <span
          aria-hidden
          style={{ transitionDuration: holding ? `${HOLD_MS}ms` : "0ms" }}
          className={`absolute inset-x-0 -bottom-2 h-1 origin-left bg-current transition-transform ease-linear ${holding ? "scale-x-100" : "scale-x-0"}`}
        />
      </span>
    </Button>
  );
}
