export const ROLES = ["owner", "leading hand", "office"] as const;
export type Role = (typeof ROLES)[number];

export const isRole = (text: string): text is Role => (ROLES as readonly string[]).includes(text);
