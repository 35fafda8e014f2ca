/** The store could not be reached, or the connection broke while it worked. */
export class StoreUnavailableError extends Error {
  constructor(cause: unknown) {
    super('the store cannot be reached at the moment', { cause });
    this.name = 'StoreUnavailableError';
  }
}

/** Nothing was sent yet: every statement may be tried again. */
const neverSent = new Set(['ECONNREFUSED', 'ENOENT', 'EAGAIN', '57P03', '53300']);

/** The connection broke, so a statement on its way may or may not have been carried out. */
const broken = new Set(['ECONNRESET', 'EPIPE', '57P01', '57P02', '08006', '08003', '08000']);

const brokenMessages =
  /Connection terminated|connection timeout|Client has encountered|not queryable|already released/i;

/** How far a statement got that failed for want of a connection; null: it failed for another reason. */
export function lostConnection(error: unknown): 'before-sending' | 'while-sent' | null {
  const { code, message } = describe(error);
  if (neverSent.has(code) || /timeout exceeded when trying to connect/i.test(message)) {
    return 'before-sending';
  }
  return broken.has(code) || brokenMessages.test(message) ? 'while-sent' : null;
}

function describe(error: unknown): { code: string; message: string } {
  if (!(error instanceof Error)) return { code: '', message: String(error) };
  const code = 'code' in error && typeof error.code === 'string' ? error.code : '';
  return { code, message: error.message };
}
