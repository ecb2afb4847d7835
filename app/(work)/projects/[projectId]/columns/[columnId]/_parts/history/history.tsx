import { Section } from "#app/_ui/page/section.tsx";
import type { TickPerson } from "#app/_field/ticking/tick-column.ts";
import type { ColumnPage } from "../column-page.ts";
import { historyEntries } from "./history-entries.ts";
import { HistoryList } from "./history-list.tsx";

export type HistoryProps = { readonly page: ColumnPage; readonly me: TickPerson };

/** Who did what when: on site, and in the schedule. */
export function History({ page, me }: HistoryProps) {
  const { project, column, events, state, queried, changes } = page;
  const fates = new Map(state.known.map(({ id, fate }) => [id, fate]));
  const entries = historyEntries({ events, fates, queried, changes });
  return (
    <Section title="History" note={entries.length === 0 ? undefined : "latest first, by when it happened"} className="no-print">
      {entries.length === 0
        ? <p className="text-ink-soft">Nothing has been recorded yet. Every stage, release, reading and change of the schedule will stand here.</p>
        : (
          <HistoryList
            project={{ id: project.id, timeZone: project.timeZone, units: project.units }} me={me} columnId={column.id}
            about={`${column.gridRef}, ${column.fromLevel.name}`} entries={entries} toAcknowledge={toAcknowledge(page)}
          />
        )}
    </Section>
  );
}

/** Broken rules the owner has not seen yet, by the entry that raised them. */
const toAcknowledge = ({ state }: Pick<ColumnPage, "state">) =>
  state.exceptions.map(({ eventId, code, values, acknowledged }) => ({ eventId, code, values, acknowledged }));
