import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { loadCampusFile } from '#planning/load-campus-file.js';
import type { Entry } from '../optimizer/contest.js';
import { generatedFile, nameOf } from '../programs/generated-program.js';
import type { ProgramShape } from '../programs/shape.js';
import { kinds, MOST, numbers, UsageError } from './shape-options.js';
import { sizedNumber, type Sized } from './sized-option.js';

/** Programs of a bench: campus files that are named, and generated ones. */
export interface EntryOptions {
  readonly files: readonly string[];
  readonly sizes: readonly number[];
  readonly years: readonly number[];
  readonly kinds: readonly ProgramShape['kind'][];
  readonly seeds: readonly number[];
  readonly types: Sized;
  readonly seconds: Sized;
}

/** The options of `parseArgs` that choose programs. */
export const ENTRY_OPTIONS = {
  sizes: { type: 'string' },
  years: { type: 'string' },
  kinds: { type: 'string' },
  seeds: { type: 'string', default: '1' },
  types: { type: 'string' },
  seconds: { type: 'string' },
  campus: { type: 'string', multiple: true, default: [] as string[] },
} as const;

interface EntryValues {
  readonly sizes?: string | undefined;
  readonly years?: string | undefined;
  readonly kinds?: string | undefined;
  readonly seeds: string;
  readonly types?: string | undefined;
  readonly seconds?: string | undefined;
  readonly campus: readonly string[];
}

/** What is used where an option is left out. */
export interface EntryDefaults {
  readonly sizes: string;
  readonly years: string;
  readonly kinds: string;
  readonly seconds: string;
}

const MOST_SECONDS = 3600;

export function entryOptions(values: EntryValues, defaults: EntryDefaults): EntryOptions {
  const files = values.campus;
  // Where only campus files are named, nothing is generated.
  const sizes = values.sizes ?? (files.length > 0 ? '' : defaults.sizes);
  return {
    files,
    sizes: sizes === '' ? [] : numbers('sizes', sizes, { most: MOST.sites }),
    years: numbers('years', values.years ?? defaults.years, { most: MOST.years }),
    kinds: kinds(values.kinds ?? defaults.kinds),
    seeds: numbers('seeds', values.seeds, { most: MOST.seed }),
    types: sizedNumber('types', values.types, MOST.types),
    seconds: sizedNumber('seconds', values.seconds ?? defaults.seconds, MOST_SECONDS),
  };
}

/** The programs chosen; generated ones are written into a folder. */
export function entriesOf(options: EntryOptions, folder: string): Entry[] {
  mkdirSync(folder, { recursive: true });
  const given = options.files.map((path) => givenEntry(options, path));
  return [
    ...given,
    ...shapesOf(options).map((shape) => generatedEntry(options, { shape, folder })),
  ];
}

function givenEntry({ seconds }: EntryOptions, path: string): Entry {
  const load = loadCampusFile(readFileSync(path, 'utf8'));
  if (!load.ok) throw new UsageError(`--campus ${path}: it cannot be used; check it first.`);
  const { calendar, candidates } = load.campus;
  const sites = candidates.length;
  return {
    ...{ name: basename(path, '.json'), path, sites, years: calendar.horizonYears },
    seconds: secondsFor(seconds, sites),
  };
}

function shapesOf({ sizes, years, kinds: of, seeds, types }: EntryOptions): ProgramShape[] {
  return sizes.flatMap((sites) =>
    years.flatMap((count) =>
      of.flatMap((kind) =>
        seeds.map((seed) => {
          const each = types(sites);
          const shape = { sites, years: count, kind, seed };
          return each === undefined ? shape : { ...shape, types: each };
        }),
      ),
    ),
  );
}

function generatedEntry(
  { seconds }: EntryOptions,
  { shape, folder }: { readonly shape: ProgramShape; readonly folder: string },
): Entry {
  const name = nameOf(shape);
  const path = join(folder, `${name}.json`);
  writeFileSync(path, JSON.stringify(generatedFile(shape)));
  const { sites, years, kind } = shape;
  return {
    ...{ name, path, sites, years, family: `${kind}, ${years} years` },
    seconds: secondsFor(seconds, sites),
  };
}

function secondsFor(seconds: Sized, sites: number): number {
  const found = seconds(sites);
  if (found !== undefined) return found;
  throw new UsageError(`--seconds: it has none for programs of ${sites} sites.`);
}
