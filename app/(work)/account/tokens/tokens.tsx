import { paths } from "#app/paths.ts";
import { TokenForm } from "./token-form.tsx";
import { TokenList, type TokenRow } from "./token-list.tsx";

/** What a person's own programs come in with. */
export function Tokens({ tokens }: { readonly tokens: readonly TokenRow[] }) {
  return (
    <div className="flex flex-col gap-6">
      <p className="max-w-prose text-ink-soft">
        A spreadsheet or a script of yours may ask the calculators with a token instead of your password. It acts as you, and stops when you revoke it, when it runs out, or when your sign-in is closed.
        What can be asked is written in the <a href={paths.openApi()}>description for programs</a> (OpenAPI 3.1).
      </p>
      <TokenList tokens={tokens} />
      <TokenForm />
    </div>
  );
}
