"use client";

import { useState, useTransition } from "react";
import type { Failure } from "#lib/kernel/result.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { CheckField } from "#app/_ui/field/check-field.tsx";
import { FailureNotice } from "#app/_ui/message/failure-notice.tsx";
import { DataTable, type DataColumn } from "#app/_ui/page/data-table.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { acceptReuseAction } from "../actions.ts";
import type { ReuseRow } from "./reuse-rows.ts";

type Group = { readonly title: string; readonly rows: readonly ReuseRow[] };
type Props = { readonly projectId: string; readonly whole: boolean; readonly groups: readonly Group[]; readonly mayAccept: boolean };

/** A line chosen brings those it takes its panel over from; one left out leaves out those that take it over. */
function useChosen(rows: readonly ReuseRow[]) {
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set());
  const byKey = new Map(rows.map((row) => [row.key, row]));
  const withEarlier = (key: string): string[] => { const needs = byKey.get(key)?.needs ?? null; return [key, ...(needs === null ? [] : withEarlier(needs))]; };
  const withLater = (key: string): string[] => [key, ...rows.filter(({ needs }) => needs === key).flatMap((row) => withLater(row.key))];
  const choose = (keys: readonly string[], isIn: boolean) => setChosen((before) => {
    const reached = new Set(keys.flatMap(isIn ? withEarlier : withLater));
    return new Set(isIn ? [...before, ...reached] : [...before].filter((key) => !reached.has(key)));
  });
  return { chosen, choose };
}

export function AcceptPlan({ projectId, whole, groups, mayAccept }: Props) {
  const rows = groups.flatMap((group) => group.rows);
  const { chosen, choose } = useChosen(rows);
  const [failure, setFailure] = useState<Failure | null>(null);
  const [isPending, begin] = useTransition();
  const accept = (taken: readonly ReuseRow[]) => begin(async () => {
    const answer = await acceptReuseAction({ projectId, whole, lines: taken.map(({ line }) => line) });
    setFailure(answer.ok ? null : answer.failure);
  });
  const columns: readonly DataColumn<ReuseRow>[] = [
    {
      key: "face", head: "Column and face", isRowHead: true,
      cell: ({ key, column, face }) => {
        const name = `${column}, face ${face}`;
        if (!mayAccept || whole) return name;
        return <><div className="no-print"><CheckField name={key} label={name} isSelected={chosen.has(key)} onChange={(isIn) => choose([key], isIn)} /></div><span className="hidden print:inline">{name}</span></>;
      },
    },
    { key: "mark", head: "Mark", cell: ({ mark }) => mark },
    { key: "size", head: "Size", isFigure: true, cell: ({ size }) => size },
    { key: "from", head: "Panel", cell: ({ from, where, kind }) => <><span className={kind === "new" ? "text-accent" : ""}>{from}</span>{where ? <span className="block text-sm text-ink-soft">{where}</span> : null}</> },
    { key: "work", head: "Work", cell: ({ work }) => work },
    { key: "cost", head: "Cost", isFigure: true, cell: ({ cost }) => cost },
  ];
  return (
    <>
      {mayAccept ? (
        <div className="no-print flex flex-wrap items-center gap-3">
          <Button kind="primary" size="glove" isPending={isPending} onPress={() => accept(rows)}>{whole ? `Accept all ${rows.length}, in place of the older ones` : `Accept all ${rows.length}`}</Button>
          {whole ? null : <Button size="glove" isDisabled={chosen.size === 0 || isPending} onPress={() => accept(rows.filter(({ key }) => chosen.has(key)))}>Accept the {chosen.size} chosen</Button>}
          <p className="basis-60 grow text-ink-soft">An accepted panel is spoken for: no other column gets it, and the cutting plan leaves its face out.</p>
        </div>
      ) : <p className="text-ink-soft">The owner or the office accepts the plan; the panels are spoken for then.</p>}
      {failure ? <FailureNotice failure={failure} /> : null}
      {groups.map(({ title, rows: own }) => (
        <Section key={title} title={title} note={`${own.length} panels, ${own.filter(({ kind }) => kind === "new").length} new`}>
          {mayAccept && !whole ? <div className="no-print"><CheckField name={`all ${title}`} label={`All ${own.length} of ${title}`} size="glove" isSelected={own.every(({ key }) => chosen.has(key))} onChange={(isIn) => choose(own.map(({ key }) => key), isIn)} /></div> : null}
          <DataTable caption={`Panels for ${title}`} isCaptionHidden columns={columns} rows={own} rowKey={({ key }) => key} />
        </Section>
      ))}
    </>
  );
}
