/** The roles with what each is for, as they are offered to the owner. */
export const ROLE_CHOICES = [
  { value: "leading hand", label: "Leading hand", note: "runs the crew on site, ticks stages" },
  { value: "office", label: "Office", note: "sets projects up, imports schedules" },
  { value: "owner", label: "Owner", note: "everything, people and exceptions too" },
] as const;
