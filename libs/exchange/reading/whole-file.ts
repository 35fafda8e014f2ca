import { anError, type Problem, type ProblemText } from '#domain/problem.js';

/** An error of a file as a whole. */
export function fileProblem(code: string, text: ProblemText): Problem {
  return anError({ code, record: 'the file', field: '' }, text);
}
