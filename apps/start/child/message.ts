/** A child's message of one kind, or undefined when it is another. */
export function messageOf<T extends { readonly kind: string }>(
  message: unknown,
  ...kinds: readonly T['kind'][]
): T | undefined {
  const kind = typeof message === 'object' && message !== null && 'kind' in message && message.kind;
  return kinds.some((known) => known === kind) ? (message as T) : undefined;
}
