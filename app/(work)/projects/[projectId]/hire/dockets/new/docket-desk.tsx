"use client";

import { useEffect, useState } from "react";
import { Button } from "#app/_ui/control/button.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import { instantWords } from "#app/_ui/value/time-words.ts";
import { DocketForm, type DocketFormProps } from "./docket-form.tsx";
import { type Draft, dropDraft, findDraft } from "./kept-draft.ts";

export type DocketDeskProps = Omit<DocketFormProps, "draftKey" | "draft"> & { readonly personId: string };
type Found = "looking" | { readonly draft: Draft | null; readonly isAsked: boolean };

/** The form, and before it the question what becomes of an entry that was begun on this phone and never sent. */
export function DocketDesk({ personId, ...props }: DocketDeskProps) {
  const { project, supplier, kind, answersId } = props;
  const key = [personId, project.id, supplier.id, kind, answersId ?? ""].join(" ");
  const [found, setFound] = useState<Found>("looking");
  useEffect(() => {
    let isGone = false;
    void findDraft(key).then((draft) => { if (!isGone) setFound(draft ? { draft, isAsked: true } : { draft: null, isAsked: false }); });
    return () => { isGone = true; };
  }, [key]);
  if (found !== "looking" && found.isAsked && found.draft) {
    const { day, time } = instantWords(new Date(found.draft.keptAt).toISOString(), project.timeZone);
    return (
      <Notice title="An entry is kept on this phone and was not sent.">
        <p>Last changed {day}, {time}{found.draft.photos.length > 0 ? `, with ${found.draft.photos.length === 1 ? "one photo" : `${found.draft.photos.length} photos`}` : ""}.</p>
        <div className="mt-3 flex flex-wrap gap-3">
          <Button kind="primary" size="glove" onPress={() => setFound({ draft: found.draft, isAsked: false })}>Take it up again</Button>
          <Button size="glove" onPress={() => { void dropDraft(key); setFound({ draft: null, isAsked: false }); }}>Drop it and start anew</Button>
        </div>
      </Notice>
    );
  }
  const draft = found === "looking" ? null : found.draft;
  return <DocketForm key={draft?.keptAt ?? ""} {...props} draftKey={found === "looking" ? null : key} draft={draft} />;
}
