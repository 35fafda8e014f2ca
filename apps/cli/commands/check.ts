import { loadCampusFile } from '#planning/load-campus-file.js';
import { EXIT } from '../exit-codes.js';
import { asJson, type Output } from '../output.js';
import { counted, problemLines } from '../problem-lines.js';
import { readText } from '../read-files.js';

/** `check CAMPUS.json`: every problem of a campus file at once. */
export async function check(
  path: string,
  options: { json?: true },
  output: Output,
): Promise<number> {
  const load = loadCampusFile(await readText(path));
  const problems = load.ok ? load.warnings : load.problems;
  const errors = problems.filter((p) => p.severity === 'error').length;
  if (options.json) {
    output.out(asJson({ ok: load.ok, errors, warnings: problems.length - errors, problems }));
  } else {
    for (const line of problemLines(problems)) output.out(line);
    const found = `${counted(errors, 'error')}, ${counted(problems.length - errors, 'warning')}`;
    output.out(
      load.ok
        ? `${load.campus.name}: the file can be planned from (${found}).`
        : `The file cannot be planned from (${found}).`,
    );
  }
  return load.ok ? EXIT.fine : EXIT.badInput;
}
