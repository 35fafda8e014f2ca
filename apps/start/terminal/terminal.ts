/** Where the messages to the person at the keyboard go. */
export interface Terminal {
  /** A line that stays. */
  say(line: string): void;
  /** A line that the next one replaces; where lines cannot be replaced, one now and then. */
  progress(line: string): void;
}

/** Milliseconds between two lines of progress in a log file. */
const logEvery = 5_000;

export function terminalOn(output: NodeJS.WriteStream): Terminal {
  let isOpen = false;
  let loggedAt = 0;
  const endLine = (): void => {
    if (isOpen) output.write('\n');
    isOpen = false;
  };
  return {
    say: (line) => {
      endLine();
      output.write(`${line}\n`);
    },
    progress: (line) => {
      if (output.isTTY) {
        output.write(`\r\u001b[2K  ${line}`);
        isOpen = true;
      } else if (Date.now() - loggedAt >= logEvery) {
        loggedAt = Date.now();
        output.write(`  ${line}\n`);
      }
    },
  };
}
