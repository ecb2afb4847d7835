import { nothingHere, refuse, told, wrongMethod } from "../../_parts/answer.ts";
import { findCalculator } from "../../_parts/calculators.ts";
import { readJson } from "../../_parts/read-json.ts";
import { tokenCaller } from "../../_parts/token-caller.ts";

type Address = { readonly params: Promise<{ readonly working: string }> };

/** Works out one calculator. The token is looked at before a byte of the question is read. */
export async function POST(request: Request, { params }: Address): Promise<Response> {
  const calculator = findCalculator((await params).working);
  if (calculator === undefined) return nothingHere();
  const caller = await tokenCaller(request);
  if (!caller.ok) return caller.failure;
  const given = await readJson(request);
  if (!given.ok) return given.failure;
  const answer = await calculator.workOut(caller.value, given.value);
  return answer.ok ? told(answer.value) : refuse(answer.failure);
}

const postOnly = async (_request: Request, { params }: Address): Promise<Response> =>
  findCalculator((await params).working) === undefined ? nothingHere() : wrongMethod("POST");

export { postOnly as GET, postOnly as PUT, postOnly as PATCH, postOnly as DELETE };
