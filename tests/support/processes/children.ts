import { fileURLToPath } from 'node:url';
import { SupervisedChild } from '#apps/start/child/supervised-child.js';

/** Paths of the programs that tests start. They run from dist/, as the real ones do. */
export const programs = {
  store: inProject('dist/apps/start/store/main.js'),
  api: inProject('tests/support/processes/fake-api.mjs'),
  solver: inProject('tests/support/processes/fake-solver.mjs'),
  start: inProject('tests/support/processes/fake-start.mjs'),
};

function inProject(path: string): string {
  return fileURLToPath(new URL(`../../../${path}`, import.meta.url));
}

export interface TestChild {
  readonly child: SupervisedChild;
  /** The newest message in which the child said that it is ready. */
  readonly ready: <T>() => Promise<T>;
}

/** Starts a supervised program of the tests, and waits for its word after every start. */
export function startChild(
  module: string,
  options: { args?: readonly string[]; env?: Readonly<Record<string, string>> } = {},
): TestChild {
  const said: unknown[] = [];
  const waiting: ((message: unknown) => void)[] = [];
  const { args = [], env = {} } = options;
  const child = new SupervisedChild({
    name: module.split('/').at(-1) ?? module,
    module,
    args,
    env: () => env,
    onMessage: (message) => {
      said.push(message);
      for (const tell of waiting.splice(0)) tell(message);
    },
    onGivenUp: (reason) => {
      throw new Error(reason);
    },
  });
  child.start();
  const ready = <T>(): Promise<T> =>
    said.length > 0
      ? Promise.resolve(said.at(-1) as T)
      : new Promise<T>((resolve) => waiting.push((message) => resolve(message as T)));
  return { child, ready };
}

/** Kills a child as the system would: it gets no chance to tidy up. */
export function killHard({ child }: TestChild): boolean {
  return child.pid !== null && process.kill(child.pid, 'SIGKILL');
}
