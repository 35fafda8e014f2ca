import { createHash } from 'node:crypto';

/**
 * A JSON text that is the same for equal documents: keys in code unit order, no space. Fields left
 * undefined are left out. Follows RFC 8785 in its ordering and number form.
 */
export function canonicalJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map((v) => canonicalJson(v ?? null)).join(',')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'null';
  const fields = Object.entries(value)
    .filter(([, field]) => field !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, field]) => `${JSON.stringify(key)}:${canonicalJson(field)}`);
  return `{${fields.join(',')}}`;
}

/** `sha-256:` and the hexadecimal digest of a document's canonical JSON text. */
export function digestOf(document: unknown): string {
  return `sha-256:${createHash('sha256').update(canonicalJson(document)).digest('hex')}`;
}
