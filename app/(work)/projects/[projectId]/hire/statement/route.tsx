import { currentCaller } from "#lib/server/gate/session.ts";
import { getStatement } from "#lib/server/hire/get-hire.ts";
import { answerFailure } from "#app/api/answer-failure.ts";
import { ownAccount } from "../../../../own-account.ts";
import { answerPdf } from "../_papers/answer-pdf.ts";
import { StatementPaper } from "../_papers/statement-paper.tsx";

type Context = { readonly params: Promise<{ projectId: string }> };

export async function GET(request: Request, { params }: Context): Promise<Response> {
  const query = new URL(request.url).searchParams;
  const asked = { projectId: (await params).projectId, supplierId: query.get("supplier") ?? "", from: query.get("from") ?? "", to: query.get("to") ?? "" };
  const [answer, account] = await Promise.all([getStatement(await currentCaller(), asked), ownAccount()]);
  if (!answer.ok) return answerFailure(answer.failure);
  return answerPdf(<StatementPaper given={answer.value} from={account.ok ? account.value.companyName : ""} />, `hire-statement-${answer.value.supplier.name}-${asked.from}`);
}
