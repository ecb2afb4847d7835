import type { Role } from "./roles.ts";

/** Every permission with the roles that hold it. Names read "area.verb"; a use case must name one of them. */
const HOLDERS = {
  "account.keep": ["owner", "leading hand", "office"],
  "people.read": ["owner", "leading hand", "office"],
  "people.manage": ["owner"],
  "workings.use": ["owner", "leading hand", "office"],
  "project.read": ["owner", "leading hand", "office"],
  "project.set-up": ["owner", "office"],
  "schedule.import": ["owner", "office"],
  "column.change": ["owner", "office"],
  "clamp-kind.change": ["owner", "office"],
  "pours.plan": ["owner", "leading hand", "office"],
  "progress.read": ["owner", "leading hand", "office"],
  "progress.record": ["owner", "leading hand"],
  "exception.acknowledge": ["owner"],
  "gear.read": ["owner", "leading hand", "office"],
  "gear.move": ["owner", "leading hand", "office"],
  "gear.count": ["owner", "leading hand", "office"],
  "gear.settle": ["owner", "office"],
  "order.receive": ["owner", "leading hand", "office"],
  "order.record": ["owner", "office"],
  "reuse.accept": ["owner", "office"],
  "hire.read": ["owner", "leading hand", "office"],
  "hire.count": ["owner", "leading hand", "office"],
  "hire.record": ["owner", "office"],
  "hire.settle": ["owner", "office"],
} as const satisfies Record<string, readonly Role[]>;

export type Permission = keyof typeof HOLDERS;
export const PERMISSIONS = Object.keys(HOLDERS) as readonly Permission[];

/** Shared by the gate, which decides, and the menus, which only spare a person a refusal. */
export const can = (role: Role, permission: Permission): boolean =>
  (HOLDERS[permission] as readonly Role[]).includes(role);

/** Who to ask, where a person's own role does not cover something. */
export const rolesWith = (permission: Permission): readonly Role[] => HOLDERS[permission];
