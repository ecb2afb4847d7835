"use client";

import { useState } from "react";
import { useRouter } from "next/navigation";
import { Button } from "#app/_ui/control/button.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import { instantWords } from "#app/_ui/value/time-words.ts";
import { paths } from "#app/paths.ts";
import { PhotoPicker } from "../../hire/dockets/photo-picker.tsx";
import { shrunk } from "../../hire/dockets/send-photos.ts";
import { addCountPhotoAction } from "./actions.ts";

type Props = {
  readonly projectId: string; readonly countId: string; readonly place: string; readonly timeZone: string; readonly canAdd: boolean;
  readonly photos: readonly { readonly id: string; readonly takenAt: string }[];
};

/** How it lay there when it was counted; photos are added to a locked count and never taken away. */
export function CountPhotos({ projectId, countId, place, timeZone, canAdd, photos }: Props) {
  const router = useRouter();
  const [chosen, setChosen] = useState<readonly File[]>([]);
  const [state, setState] = useState<"idle" | "sending" | "failed">("idle");
  // One after the other, so that a weak connection loses no more than one.
  const send = async () => {
    setState("sending");
    const failed: File[] = [];
    for (const photo of chosen) {
      const data = new FormData();
      data.set("projectId", projectId);
      data.set("countId", countId);
      data.set("takenAt", new Date(photo.lastModified || Date.now()).toISOString());
      data.set("file", new File([await shrunk(photo)], "photo"));
      const sent = await addCountPhotoAction(data).catch(() => ({ ok: false }));
      if (!sent.ok) failed.push(photo);
    }
    setChosen(failed);
    setState(failed.length > 0 ? "failed" : "idle");
    router.refresh();
  };
  const when = (at: string): string => { const { day, time, zone } = instantWords(at, timeZone); return `${day}, ${time} ${zone}`; };
  return (
    <div className="mt-2 flex flex-col gap-3">
      {photos.length > 0 ? (
        <ul className="grid grid-cols-3 gap-2 sm:grid-cols-6">
          {photos.map(({ id, takenAt }) => (
            // Kept in the database and served to this company alone; nothing for an image service to reach.
            <li key={id} className="border-2 border-ink bg-sheet"><a href={paths.countPhoto(projectId, id)}><img src={paths.countPhoto(projectId, id)} alt={`${place}, taken ${when(takenAt)}`} className="aspect-4/3 w-full object-cover" /></a></li>
          ))}
        </ul>
      ) : null}
      {state === "failed" ? <Notice kind="problem" title="Not every photo was sent.">A count takes up to 12 photos of up to 4 MB. Check the connection and send them again.</Notice> : null}
      {canAdd ? (
        <div className="no-print flex flex-wrap items-center gap-3">
          <PhotoPicker photos={chosen} onChange={setChosen} hint={photos.length === 0 ? "Photograph how it lies there." : ""} to="count" />
          {chosen.length > 0 ? <Button kind="primary" size="glove" isPending={state === "sending"} onPress={() => void send()}>Send {chosen.length}</Button> : null}
        </div>
      ) : null}
    </div>
  );
}
