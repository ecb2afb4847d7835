"use client";

import { Button } from "./_ui/control/button.tsx";
import { Notice } from "./_ui/message/notice.tsx";
import { Page } from "./_ui/page/page.tsx";

export type ErrorPageProps = { readonly error: Error & { readonly digest?: string }; readonly reset: () => void };

/** Shows a reference number and nothing of what went wrong inside. */
export default function ErrorPage({ error, reset }: ErrorPageProps) {
  return (
    <Page title="Something went wrong on our side">
      <Notice kind="problem" title="This was not your doing, and it is written down on the server.">
        Try again; if it comes back, tell whoever looks after the server{error.digest ? <> this number: <strong className="font-mono">{error.digest}</strong></> : null}.
      </Notice>
      <p><Button kind="primary" onPress={() => { reset(); }}>Try again</Button></p>
    </Page>
  );
}
