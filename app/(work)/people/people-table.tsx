"use client";

import { DataTable, type DataColumn } from "#app/_ui/page/data-table.tsx";
import { ChangePerson } from "./change-person.tsx";
import type { Person } from "./person.ts";

export type PeopleTableProps = { readonly people: readonly Person[]; readonly ownId: string; readonly mayManage: boolean };

export function PeopleTable({ people, ownId, mayManage }: PeopleTableProps) {
  const columns: readonly DataColumn<Person>[] = [
    { key: "name", head: "Name", isRowHead: true, cell: (person) => <>{person.name}{person.id === ownId ? <span className="font-normal text-ink-soft"> (you)</span> : null}</> },
    { key: "email", head: "E-mail", cell: (person) => <span className="break-all">{person.email}</span> },
    { key: "role", head: "Role", cell: (person) => person.role },
    { key: "standing", head: "Sign-in", cell: (person) => (person.isActive ? "open" : <strong>closed</strong>) },
    ...(mayManage ? [{ key: "change", head: <span className="sr-only">Change</span>, cell: (person: Person) => <ChangePerson person={person} /> }] : []),
  ];
  return <DataTable caption="People" isCaptionHidden columns={columns} rows={people} rowKey={(person) => person.id} />;
}
