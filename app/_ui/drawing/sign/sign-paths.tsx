import type { SignPart } from "./sign-parts.ts";

/** The parts of a sign inside a drawing that has its own frame. */
export function SignPaths({ parts }: { readonly parts: readonly SignPart[] }) {
  return (
    <>
      {parts.map(({ name, d, stroke, dash }) => (
        <path key={name} className={`sign-${name}`} d={d} strokeWidth={stroke} strokeDasharray={dash} />
      ))}
    </>
  );
}
