/** What is to be done about one return, in its order. */
export const TASK_WORDS = { call: "Call off hire", load: "Clean, count and load", collect: "Collection" } as const;
