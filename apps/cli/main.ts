import { run } from './program.js';

// Where nobody reads on (`| head`), the command still ends its work: a plan is saved all the same.
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
  });
}

process.exitCode = await run(process.argv.slice(2));
