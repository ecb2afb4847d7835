import type { Refusal } from "#lib/trade/engineering/working.ts";
import type { ShutterRefusal, ShutterRefusalKind } from "#lib/trade/shutter/form-set.ts";

export const REFUSAL_TITLES: Readonly<Record<ShutterRefusalKind | "form-height", string>> = {
  "round-section": "A box of timber panels and clamps does not serve a round column.",
  "invalid-input": "A size lies outside what a form set can be drawn for.",
  "pressure-limit": "The pressure cannot be worked out for this pour.",
  "ply-span": "The ply cannot carry this pressure.",
  "no-clamp-fits": "No clamp fits over this form.",
  "no-clamp-layout": "No clamp layout carries this pressure.",
  "form-height": "The form height cannot be right.",
};

export const refusalKind = (refusal: ShutterRefusal | Refusal): ShutterRefusalKind | "form-height" =>
  "kind" in refusal ? refusal.kind : "form-height";
