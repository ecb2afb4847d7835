import type { Units } from "#app/_ui/value/format-quantity.ts";
import type { SetUp } from "../_parts/set-up-page.tsx";

export type RuleFieldsProps = { readonly rule: SetUp["shutterRule"]; readonly units: Units };
