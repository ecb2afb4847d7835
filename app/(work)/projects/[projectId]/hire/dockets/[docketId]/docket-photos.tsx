"use client";

import { useState } from "react";
import { useRouter } from "next/navigation";
import { Button } from "#app/_ui/control/button.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { instantWords } from "#app/_ui/value/time-words.ts";
import { paths } from "#app/paths.ts";
import { PhotoPicker } from "../photo-picker.tsx";
import { sendPhotos } from "../send-photos.ts";

export type DocketPhotosProps = {
  readonly projectId: string; readonly docketId: string; readonly timeZone: string; readonly canAdd: boolean;
  readonly photos: readonly { readonly id: string; readonly takenAt: string }[];
};

/** What proves the docket; photos are added and never taken away. */
export function DocketPhotos({ projectId, docketId, timeZone, photos, canAdd }: DocketPhotosProps) {
  const router = useRouter();
  const [chosen, setChosen] = useState<readonly File[]>([]);
  const [state, setState] = useState<"idle" | "sending" | "failed">("idle");
  const send = async () => {
    setState("sending");
    const failed = await sendPhotos(projectId, docketId, chosen);
    setState(failed > 0 ? "failed" : "idle");
    if (failed === 0) setChosen([]);
    router.refresh();
  };
  const when = (at: string): string => { const { day, time, zone } = instantWords(at, timeZone); return `${day}, ${time} ${zone}`; };
  if (photos.length === 0 && !canAdd) return null;
  return (
    <Section title="Photos">
      <div className="flex flex-col gap-3">
        {photos.length === 0 ? <p className="text-ink-soft">No photo yet. A picture of the full bins at the gate settles most arguments about a count.</p> : null}
        <ul className="grid grid-cols-2 gap-3 sm:grid-cols-4">
          {photos.map(({ id, takenAt }) => (
            <li key={id} className="border-2 border-ink bg-sheet">
              {/* Kept in the database and served to this company alone; nothing for an image service to reach. */}
              <a href={paths.hirePhoto(projectId, id)}><img src={paths.hirePhoto(projectId, id)} alt={`Taken ${when(takenAt)}`} className="aspect-4/3 w-full object-cover" /></a>
              <p className="px-2 py-1 text-sm">{when(takenAt)}</p>
            </li>
          ))}
        </ul>
        {state === "failed" ? <Notice kind="problem" title="Not every photo was sent.">A docket takes up to 12 photos of up to 4 MB. Check the connection and send them again.</Notice> : null}
        {canAdd ? (
          <div className="no-print flex flex-wrap items-center gap-3">
            <PhotoPicker photos={chosen} onChange={setChosen} />
            {chosen.length > 0 ? <Button kind="primary" size="glove" isPending={state === "sending"} onPress={() => void send()}>Send {chosen.length}</Button> : null}
          </div>
        ) : null}
      </div>
    </Section>
  );
}
