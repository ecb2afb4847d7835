import { unreachable, type Failure } from "#lib/kernel/result.ts";

const statusOf = (failure: Failure): number => {
  switch (failure.kind) {
    case "not-signed-in":
      return 401;
    case "not-allowed":
      return 403;
    case "not-found":
      return 404;
    case "conflict":
      return 409;
    case "invalid":
    case "rule":
      return 422;
    default:
      return unreachable(failure);
  }
};

export const answerFailure = (failure: Failure): Response => Response.json({ failure }, { status: statusOf(failure) });
