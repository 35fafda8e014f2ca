import { anError, type Problem } from '#domain/problem.js';

/** Said of a request whose worker died as often as is allowed. */
export function lostWorkerProblem(attempts: number): Problem {
  return anError({ code: 'solver-lost', record: 'solve', field: '' }, [
    `The solver stopped without an answer ${attempts} times in a row, so the solve was given up.`,
    'Try again with a shorter time limit; if it happens again, look at the memory of the machine.',
  ]);
}
