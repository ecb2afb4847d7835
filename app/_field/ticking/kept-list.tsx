"use client";

import { Link } from "#app/_ui/control/link.tsx";
import { Button } from "#app/_ui/control/button.tsx";
import { outbox } from "#app/_field/outbox.ts";
import type { KeptItem } from "#app/_field/outbox/kept-item.ts";
import type { OutboxState } from "#app/_field/use-outbox.ts";
import { paths } from "#app/paths.ts";
import { KeptRow } from "./kept-row.tsx";
import type { TickPerson, TickProject } from "./tick-column.ts";

export type KeptListProps = { readonly project: TickProject; readonly me: TickPerson; readonly kept: OutboxState; readonly onClose: () => void };

const ORDER: readonly KeptItem["standing"][] = ["asks", "refused", "waiting", "sent"];

/** Every entry made on this phone lately, and where it has got to. */
export function KeptList({ project, me, kept, onClose }: KeptListProps) {
  const own = kept.items.filter((item) => item.personId === me.id);
  const items = [...own].sort((left, right) => ORDER.indexOf(left.standing) - ORDER.indexOf(right.standing) || right.place - left.place);
  return (
    <div className="flex flex-col gap-4">
      {kept.isSignedOut ? (
        <p className="font-semibold">You are signed out. <Link href={paths.signIn(typeof location === "undefined" ? undefined : location.pathname)}>Sign in again as {me.name}</Link>; what is saved here stays and is sent then.</p>
      ) : null}
      <ul className="flex flex-col gap-2">
        {items.map((item) => <KeptRow key={item.event.id} item={item} project={project} />)}
      </ul>
      <div className="flex flex-wrap gap-3">
        {kept.counts.waiting > 0 ? <Button kind="primary" size="glove" isPending={kept.isSending} onPress={() => void outbox().flush()}>Send now</Button> : null}
        <Button size="glove" onPress={onClose}>Close</Button>
      </div>
    </div>
  );
}
