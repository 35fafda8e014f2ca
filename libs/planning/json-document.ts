/**
 * A parsed JSON object: a campus file, a plan file or an overview. The planning use cases move such
 * documents between ports and never look inside; the libs that own a format read and write it.
 */
export type JsonDocument = { readonly [key: string]: unknown };
