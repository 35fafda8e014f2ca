import { expect, test } from 'vitest';
import { anError, aWarning } from '#domain/problem.js';
import type { CampusReader } from '#planning/ports/campus-reader.js';
import { addCampus, replaceCampus } from '#planning/use-cases/save-campus.js';
import { anyDocument, memoryStore } from '../support/planning/memory-store.js';

const place = { code: 'X', record: 'site TVU-14', field: 'areaSqFt' };
const problems = [anError(place, ['wrong', 'mend it']), aWarning(place, ['odd', 'look'])];
const refuses: CampusReader = { read: () => ({ ok: false, problems }) };
const accepts: CampusReader = {
  read: () => ({ ok: true, name: 'TVU', document: anyDocument, warnings: [problems[1]!] }),
};

test('a campus with warnings is saved, and the warnings are handed on', async () => {
  const store = memoryStore();
  const outcome = await addCampus({ ...store, reader: accepts }, anyDocument);
  expect(outcome).toMatchObject({ kind: 'saved', campus: { version: 1 }, warnings: [problems[1]] });
});

test('of a campus with errors nothing is saved, and every problem is told', async () => {
  const store = memoryStore();
  const ports = { ...store, reader: refuses };
  expect(await addCampus(ports, {})).toEqual({ kind: 'refused', problems });
  const { id } = await store.campuses.add({ name: 'TVU', document: anyDocument });
  const change = { id, expectedVersion: 1, document: {} };
  expect(await replaceCampus(ports, change)).toEqual({ kind: 'refused', problems });
  expect(await store.campuses.list()).toMatchObject([{ id, version: 1 }]);
});

test('a change to an older version is refused with the newest version', async () => {
  const store = memoryStore();
  const ports = { ...store, reader: accepts };
  const { id } = await store.campuses.add({ name: 'TVU', document: anyDocument });
  const change = { id, expectedVersion: 1, document: anyDocument };
  expect(await replaceCampus(ports, change)).toMatchObject({ kind: 'saved' });
  expect(await replaceCampus(ports, change)).toEqual({ kind: 'version-conflict', current: 2 });
});
