/**
 * Everything the rules can say about an event, with the values each carries. Wording lives in the screens, keyed by code.
 * Times are instants (UTC), `to` is "nothing" when a column is back at no stage.
 */
export const FINDINGS = {
  // Broken rules: recorded with a reason, shown to the owner as exceptions.
  "gate-missing": ["gate", "stage"],
  "strip-early": ["hoursMissing", "stripFrom"],
  "strip-age-unknown": [],
  "while-held": ["heldAt"],
  "set-back-after-pour": ["to"],
  // Other things that ask for a reason.
  backdated: ["minutes", "allowedMinutes"],
  "release-after-stage": ["gate", "stage", "reachedAt"],
  "gate-revoked": ["gate"],
  hold: [],
  withdrawal: [],
  "setting-aside": [],
  // Contradictions: stored as queried.
  "before-set-back": ["setBackAt", "to"],
  "not-poured": [],
  "before-pour": ["pouredAt"],
  "pour-time-differs": ["pouredAt", "minutes"],
  "later-work-known": ["stage", "reachedAt"],
  "back-at-unreached": ["to"],
  "reading-out-of-turn": ["when", "pouredAt"],
  // Malformed: refused.
  "time-unreadable": [],
  "in-the-future": ["minutes", "allowedMinutes"],
  "before-project": ["startsAt"],
  "offsets-unreadable": [],
  "unknown-event": [],
  "already-withdrawn": [],
  "not-queried": [],
  "no-exception": [],
  // Only when many columns are ticked at once.
  "reached-already": ["stage", "reachedAt"],
} as const;

export type FindingCode = keyof typeof FINDINGS;
export type Finding = { readonly code: FindingCode; readonly values: Readonly<Record<string, string | number>> };

export const finding = <Code extends FindingCode>(
  code: Code,
  values: Readonly<Record<(typeof FINDINGS)[Code][number], string | number>>,
): Finding => ({ code, values });

const BREACHES: readonly FindingCode[] = [
  "gate-missing",
  "strip-early",
  "strip-age-unknown",
  "while-held",
  "set-back-after-pour",
];
/** Whether the owner is to see it as an exception. */
export const isBreach = ({ code }: Finding): boolean => BREACHES.includes(code);
