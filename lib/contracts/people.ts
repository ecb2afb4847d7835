import { z } from "zod";
import { ROLES } from "#lib/access/roles.ts";
import { id, line } from "./fields.ts";

export const email = z
  .string()
  .trim()
  .max(254, "Keep this to 254 characters.")
  .transform((text) => text.toLowerCase())
  .pipe(z.email("Give an e-mail address, as name@example.com."));

/** NIST SP 800-63B section 5.1.1.2 (from memory): length counts, composition rules do not. */
export const password = z.string().min(10, "Use at least 10 characters.").max(200, "Keep this to 200 characters.");

export const role = z.enum(ROLES, { message: "Choose a role." });

export const signInInput = z.object({ email, password: z.string().max(1000), address: z.string().max(100) });
export const foundCompanyInput = z.object({ companyName: line(120), name: line(120), email, password });
export const readInvitationInput = z.object({ token: z.string().max(200) });
export const acceptInvitationInput = z.object({ token: z.string().max(200), name: line(120), password });
export const invitePersonInput = z.object({ email, role });
export const revokeInvitationInput = z.object({ invitationId: id });
export const personInput = z.object({ personId: id });
export const changeRoleInput = z.object({ personId: id, role });
export const setActiveInput = z.object({ personId: id, isActive: z.boolean() });
export const changePasswordInput = z.object({ current: z.string().max(1000), next: password });
export const nothing = z.object({});

/** What the programs of one person are answered. */
export const MOST_QUESTIONS_A_MINUTE = 600;
export const createTokenInput = z.object({ name: line(60), days: z.number().int().min(1, "At least a day.").max(366, "At most a year.") });
export const revokeTokenInput = z.object({ tokenId: id });
