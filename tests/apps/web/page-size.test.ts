import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';

const page = fileURLToPath(new URL('../../../dist/web/', import.meta.url));

test('the first load is under 250 kB of compressed script, and asks nothing of other hosts', () => {
  const html = readFileSync(`${page}index.html`, 'utf8');
  const scripts = [...html.matchAll(/(?:src|href)="(\/assets\/[^"]+\.js)"/g)];
  expect(scripts.length).toBeGreaterThan(0);
  const bytes = scripts.map(([, path]) => gzipSync(readFileSync(`${page}${path}`)).length);
  expect(bytes.reduce((sum, size) => sum + size, 0)).toBeLessThan(250_000);
  const css = readdirSync(`${page}assets`).filter((name) => name.endsWith('.css'));
  const text = [html, ...css.map((name) => readFileSync(`${page}assets/${name}`, 'utf8'))].join();
  expect(text.match(/(?:src|href|url)\s*[=(]\s*["']?https?:/g)).toBeNull();
});
