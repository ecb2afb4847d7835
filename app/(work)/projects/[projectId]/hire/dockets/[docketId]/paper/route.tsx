import { currentCaller } from "#lib/server/gate/session.ts";
import { getDocket } from "#lib/server/hire/get-hire.ts";
import { answerFailure } from "#app/api/answer-failure.ts";
import { ownAccount } from "../../../../../../own-account.ts";
import { answerPdf } from "../../../_papers/answer-pdf.ts";
import { DocketPaper } from "../../../_papers/docket-paper.tsx";

type Context = { readonly params: Promise<{ projectId: string; docketId: string }> };

export async function GET(_request: Request, { params }: Context): Promise<Response> {
  const [answer, account] = await Promise.all([getDocket(await currentCaller(), await params), ownAccount()]);
  if (!answer.ok) return answerFailure(answer.failure);
  const { kind, number } = answer.value.docket;
  if (kind !== "off-hire" && kind !== "return") return answerFailure({ kind: "not-found", what: "docket paper" });
  return answerPdf(<DocketPaper given={answer.value} from={account.ok ? account.value.companyName : ""} />, `${kind === "return" ? "return-docket" : "off-hire-notice"}-${number}`);
}
