/** What happened, and what to do about it. `{name}` stands for a value that comes with the code. */
export type Wording = { readonly title: string; readonly todo: string };
