import type { JsonDocument } from '#planning/json-document.js';

/** Reads a document column. Only `toText` writes such columns, so anything else is damage. */
export function fromText(text: string): JsonDocument {
  const value: unknown = JSON.parse(text);
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    throw new TypeError(`a stored document must be a JSON object, got ${text.slice(0, 40)}`);
  }
  return value as JsonDocument;
}

export function toText(document: JsonDocument): string {
  return JSON.stringify(document);
}
