import "server-only";
import type { z } from "zod";
import { can, type Permission } from "#lib/access/permissions.ts";
import { remedy } from "#lib/contracts/remedies.ts";
import { fail, invalid, notFound, type Failure, type Fail, type Result } from "#lib/kernel/result.ts";
import { now } from "../platform/clock.ts";
import { transaction } from "../platform/db.ts";
import type { Caller } from "./caller.ts";
import { sealCompany, sealProject, type CompanyScope, type ProjectScope } from "./scope.ts";
import { enterCompany, findMember, hasProject } from "./store.ts";

type Shape = z.ZodType;
type Run<Scope, Input extends Shape, Answer> = (scope: Scope, input: z.output<Input>) => Promise<Result<Answer>>;
type Given<Input extends Shape, Answer> = (caller: Caller | null, input: z.input<Input>) => Promise<Result<Answer>>;
export type UseCase = {
  readonly name: string;
  readonly permission: Permission | "public";
  readonly within: "company" | "project" | "door";
  readonly call: (caller: Caller | null, given: unknown) => Promise<Result<unknown>>;
};

const registered: UseCase[] = [];
/** Every use case whose file has been loaded; the permission table test walks it. */
export const useCases = (): readonly UseCase[] => registered;

/** Thrown inside a transaction to undo it and still return the failure as data. */
class Undone extends Error {
  constructor(readonly failure: Failure) {
    super("undone");
  }
}

function check<Input extends Shape>(input: Input, given: unknown): Result<z.output<Input>> {
  const parsed = input.safeParse(given, { error: remedy });
  if (parsed.success) return { ok: true, value: parsed.data };
  return invalid(...parsed.error.issues.map((issue) => ({ field: issue.path.join("."), message: issue.message })));
}

async function keepOrUndo<Answer>(work: Promise<Result<Answer>>): Promise<Result<Answer>> {
  const result = await work;
  if (!result.ok) throw new Undone(result.failure);
  return result;
}

const asFailure = (error: unknown): Fail<Failure> => {
  if (error instanceof Undone) return fail(error.failure);
  throw error;
};

async function enter(caller: Caller, permission: Permission, work: (scope: CompanyScope) => Promise<Result<unknown>>) {
  return transaction(async (tx) => {
    await enterCompany(tx, caller.companyId);
    const member = await findMember(tx, caller);
    if (!member) throw new Undone({ kind: "not-signed-in" });
    if (!can(member.role, permission)) throw new Undone({ kind: "not-allowed", permission });
    return keepOrUndo(work(sealCompany({ tx, companyId: caller.companyId, member, now: now() })));
  }).catch(asFailure);
}

/** A use case about the company: actor, permission, input, one transaction. A failure undoes everything it wrote. */
export function companyUseCase<Input extends Shape, Answer>(
  name: string,
  permission: Permission,
  input: Input,
  run: Run<CompanyScope, Input, Answer>,
): Given<Input, Answer> {
  const call = async (caller: Caller | null, given: unknown): Promise<Result<Answer>> => {
    if (!caller) return fail({ kind: "not-signed-in" });
    return (await enter(caller, permission, async (scope) => {
      const checked = check(input, given);
      return checked.ok ? run(scope, checked.value) : checked;
    })) as Result<Answer>;
  };
  registered.push({ name, permission, within: "company", call });
  return call;
}

/** The same for one project: a project of another company is not found, never "not allowed". */
export function projectUseCase<Input extends z.ZodType<{ projectId: string }>, Answer>(
  name: string,
  permission: Permission,
  input: Input,
  run: Run<ProjectScope, Input, Answer>,
): Given<Input, Answer> {
  const call = async (caller: Caller | null, given: unknown): Promise<Result<Answer>> => {
    if (!caller) return fail({ kind: "not-signed-in" });
    return (await enter(caller, permission, async (scope) => {
      const checked = check(input, given);
      if (!checked.ok) return checked;
      const { projectId } = checked.value;
      if (!(await hasProject(scope.tx, scope.companyId, projectId))) return notFound("project");
      return run(sealProject(scope, projectId), checked.value);
    })) as Result<Answer>;
  };
  registered.push({ name, permission, within: "project", call });
  return call;
}

/** A use case at the door, before anyone is known: signing in, accepting an invitation. Listed as public, so it can be counted. */
export function doorUseCase<Input extends Shape, Answer>(
  name: string,
  input: Input,
  run: (input: z.output<Input>) => Promise<Result<Answer>>,
): (given: z.input<Input>) => Promise<Result<Answer>> {
  const call = async (given: unknown): Promise<Result<Answer>> => {
    const checked = check(input, given);
    return checked.ok ? run(checked.value).catch(asFailure) : checked;
  };
  registered.push({ name, permission: "public", within: "door", call: (_caller, given) => call(given) });
  return call;
}
