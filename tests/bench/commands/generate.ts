import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { generatedFile, nameOf } from '../programs/generated-program.js';
import { kinds, MOST, oneNumber, UsageError } from './shape-options.js';

/** `npm run bench -- generate --sites 60 --years 30 --kind tight --seed 3 --out FILE` */
export function generate(args: readonly string[]): void {
  const { values } = parseArgs({
    args: [...args],
    options: {
      sites: { type: 'string', default: '36' },
      years: { type: 'string', default: '30' },
      kind: { type: 'string', default: 'tight' },
      seed: { type: 'string', default: '1' },
      types: { type: 'string' },
      out: { type: 'string' },
    },
  });
  const [kind] = kinds(values.kind);
  if (values.out === undefined || kind === undefined) {
    throw new UsageError('--out: name the file to write.');
  }
  const shape = {
    sites: oneNumber('sites', values.sites, { most: MOST.sites }),
    years: oneNumber('years', values.years, { most: MOST.years }),
    kind,
    seed: oneNumber('seed', values.seed, { most: MOST.seed }),
    ...(values.types === undefined
      ? {}
      : { types: oneNumber('types', values.types, { most: MOST.types }) }),
  };
  writeFileSync(values.out, JSON.stringify(generatedFile(shape), null, 2));
  console.log(`Wrote ${nameOf(shape)} to ${values.out}`);
}
