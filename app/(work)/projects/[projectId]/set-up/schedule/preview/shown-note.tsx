/** Says so where a list is longer than what is shown of it. */
export function ShownNote({ shown, count }: { readonly shown: number; readonly count: number }) {
  return count > shown ? <p className="mt-1 text-sm text-ink-soft">The first {shown} of {count} are shown.</p> : null;
}
