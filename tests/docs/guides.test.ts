import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { errorsOf, javascriptOf } from '../support/compile-block.js';
import { blocksOf, docBlocks, type DocBlock } from '../support/doc-blocks.js';

const GUIDES = ['README.md', 'DEVELOPERS.md'];

function run(block: DocBlock): string {
  const { status, stderr } = spawnSync(process.execPath, ['--input-type=module', '-'], {
    input: javascriptOf(block),
    encoding: 'utf8',
  });
  return status === 0 ? 'ran' : stderr;
}

test('the guides are there', () => {
  expect(GUIDES.filter((guide) => !existsSync(guide))).toEqual([]);
});

describe('the code shown in the guides', () => {
  for (const block of GUIDES.flatMap(docBlocks)) {
    test(`${block.place} compiles`, () => {
      expect(errorsOf(block)).toEqual([]);
    });
    if (block.runs) {
      test(`${block.place} runs`, () => {
        expect(run(block)).toBe('ran');
      });
    }
  }

  test('is found with its line and its mark', () => {
    const text = 'One\n\n```ts\nconst a = 1;\n```\n\n```ts run\nb();\n```\n```js\nc\n```\n';
    expect(blocksOf('G.md', text)).toEqual([
      { place: 'G.md:4', code: 'const a = 1;\n', runs: false },
      { place: 'G.md:8', code: 'b();\n', runs: true },
    ]);
  });

  test('is refused when a type is wrong or a name is gone', () => {
    const [wrong, gone] = blocksOf(
      'G.md',
      "```ts\nimport { cents } from '#units/cents.js';\ncents('one');\n```\n```ts\nimport { x } from '#units/never.js';\n```\n",
    );
    expect(errorsOf(wrong!)).toEqual([expect.stringContaining("'string' is not assignable")]);
    expect(errorsOf(gone!)).toEqual([expect.stringContaining('#units/never.js')]);
  });

  test('fails the test when it throws', () => {
    const [throws] = blocksOf('G.md', "```ts run\nthrow new Error('beds');\n```\n");
    expect(run(throws!)).toContain('beds');
  });
});
