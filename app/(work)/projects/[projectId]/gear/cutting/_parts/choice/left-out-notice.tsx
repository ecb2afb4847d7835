import type { CuttingTask } from "#lib/server/cutting/plan-cutting.ts";
import { Notice } from "#app/_ui/message/notice.tsx";

/** Columns without a form set: nothing is cut for them, and it says why. */
export function LeftOutNotice({ leftOut }: Pick<CuttingTask, "leftOut">) {
  if (leftOut.length === 0) return null;
  return (
    <Notice title="Not in this plan">
      <ul className="list-disc pl-5">
        {leftOut.map(({ marks, columns, why }) => (
          <li key={`${marks.join()} ${why.limit}`}>{`${marks.join(", ")} (${columns === 1 ? "1 column" : `${columns} columns`}): ${why.message}`}</li>
        ))}
      </ul>
    </Notice>
  );
}
