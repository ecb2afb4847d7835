import { scheduleTemplateCsv } from "#lib/trade/schedule/schedule-template.ts";

/** An empty schedule to fill in, the same for everybody. */
export function GET(): Response {
  return new Response(scheduleTemplateCsv(), {
    headers: { "content-type": "text/csv; charset=utf-8", "content-disposition": 'attachment; filename="column-schedule-template.csv"' },
  });
}
