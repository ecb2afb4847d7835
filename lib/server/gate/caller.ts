/** What a session claims. The gate believes none of it before it has read the person's row. */
export type Caller = { readonly companyId: string; readonly personId: string; readonly sessionEpoch: number };
