import type { LockHolder } from '#persistence/embedded/folder-lock.js';

/** What the store's process tells the process that started it. */
export type StoreMessage =
  | { readonly kind: 'store-open'; readonly url: string }
  | { readonly kind: 'store-held-by-another'; readonly holder: LockHolder | null };

/** The exit code of a store that found its folder locked: starting it again would not help. */
export const lockedExitCode = 75;
