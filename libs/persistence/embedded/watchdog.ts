import pg from 'pg';

/** How often the store looks whether it still answers, and how long it waits for the answer. */
const checkEvery = 5_000;
const patience = 30_000;

/**
 * Calls `onStuck` when the store has not answered its own client for half a minute: a client that
 * keeps a transaction open holds up everyone, and only a restart frees them.
 */
export function watchAnswers(url: string, onStuck: () => void): () => void {
  let stopped = false;
  let timer: NodeJS.Timeout | undefined;
  const check = async (): Promise<void> => {
    const answered = await answers(url);
    if (stopped) return;
    if (answered) timer = setTimeout(() => void check(), checkEvery);
    else onStuck();
  };
  timer = setTimeout(() => void check(), checkEvery);
  return () => {
    stopped = true;
    clearTimeout(timer);
  };
}

async function answers(url: string): Promise<boolean> {
  const client = new pg.Client({
    connectionString: url,
    connectionTimeoutMillis: patience,
    query_timeout: patience,
  });
  client.on('error', () => undefined);
  try {
    await client.connect();
    await client.query('SELECT 1');
    return true;
  } catch {
    return false;
  } finally {
    void client.end().catch(() => undefined);
  }
}
