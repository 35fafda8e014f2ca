import { statSync } from 'node:fs';
import { join } from 'node:path';
import pg from 'pg';
import { expect, test } from 'vitest';
import { socketAddressOf } from '#persistence/embedded/socket-address.js';

test('a client finds the socket by the address', () => {
  const { path, url } = socketAddressOf('/srv/campus plan/store');
  expect(path).toBe('/srv/campus plan/store/.s.PGSQL.5432');
  const { host, port } = new pg.Client({ connectionString: url });
  expect(join(host, `.s.PGSQL.${port}`)).toBe(path);
});

test('a folder too deep for a socket gets one of the same address every time, for its owner only', () => {
  const deep = `/srv/${'deep/'.repeat(30)}store`;
  const { path } = socketAddressOf(deep);
  expect(path.length).toBeLessThanOrEqual(103);
  expect(socketAddressOf(deep).path).toBe(path);
  expect(socketAddressOf(`${deep}2`).path).not.toBe(path);
  expect(statSync(join(path, '..')).mode & 0o777).toBe(0o700);
});
