/** The store could not be reached, or the connection broke while it worked. */
export class StoreUnavailableError extends Error {
  constructor(cause: unknown) {
    super('the store cannot be reached at the moment', { cause });
    this.name = 'StoreUnavailableError';
  }
}

/** Nothing was sent yet: every statement may be tried again. */
const neverSent = new Set(['ECONNREFUSED', 'ENOENT', 'EAGAIN', '57P03', '53300']);

/** Chosen to give way in a deadlock or a race: rolled back whole, to be tried again. */
const undone = new Set(['40P01', '40001']);

/** The connection broke, so a statement on its way may or may not have been carried out. */
const broken = new Set(['ECONNRESET', 'EPIPE', '57P01', '57P02', '08006', '08003', '08000']);

const brokenMessages =
  /Connection terminated|connection timeout|Client has encountered|not queryable|already released/i;

/**
 * How far a statement got that may be tried again: it never left, it was rolled back, or the
 * connection broke under it. Null: it failed for a reason of its own.
 */
export function passingFailure(error: unknown): 'before-sending' | 'undone' | 'while-sent' | null {
  const { code, message } = describe(error);
  if (neverSent.has(code) || /timeout exceeded when trying to connect/i.test(message)) {
    return 'before-sending';
  }
  if (undone.has(code)) return 'undone';
  return broken.has(code) || brokenMessages.test(message) ? 'while-sent' : null;
}

function describe(error: unknown): { code: string; message: string } {
  if (!(error instanceof Error)) return { code: '', message: String(error) };
  const code = 'code' in error && typeof error.code === 'string' ? error.code : '';
  return { code, message: error.message };
}
