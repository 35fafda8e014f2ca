/** Where the messages to the person at the keyboard go. */
export interface Terminal {
  /** A line that stays. */
  readonly say: (line: string) => void;
  /**
   * A line that the next one replaces. Where lines cannot be replaced (a log file), one at each new
   * stage and one now and then.
   */
  readonly progress: (line: string, stage: string) => void;
}

/** Milliseconds between two lines of progress in a log file. */
const logEvery = 5_000;

export function terminalOn(output: NodeJS.WriteStream): Terminal {
  let isOpen = false;
  let logged = { at: 0, stage: '' };
  const endLine = (): void => {
    if (isOpen) output.write('\n');
    isOpen = false;
  };
  return {
    say: (line) => {
      endLine();
      output.write(`${line}\n`);
    },
    progress: (line, stage) => {
      if (output.isTTY) {
        output.write(`\r\u001b[2K  ${line}`);
        isOpen = true;
      } else if (stage !== logged.stage || Date.now() - logged.at >= logEvery) {
        logged = { at: Date.now(), stage };
        output.write(`  ${line}\n`);
      }
    },
  };
}
