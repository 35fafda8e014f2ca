/**
 * Mutants of numbers, which the mutation tester does not make by itself. In a copy of the project each
 * number of the formulas and their tables stands as `(true ? 12 : 13)`; the tester turns one `true` at
 * a time. A whole number up to 12 goes up by one, any other by a hundredth of itself.
 *
 *     node .config/mutation/numbers.mjs libs/estimating/water libs/estimating/yield/bearing.data.ts
 */
import { spawnSync } from 'node:child_process';
import {
  cpSync,
  mkdirSync,
  readFileSync,
  readdirSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const root = fileURLToPath(new URL('../..', import.meta.url));
const copy = join(root, '.out/mutation/numbers');
const COPIED = ['.config/mutation', 'libs', 'seeds', 'tests/estimating', 'tests/support'];
const TURNED = 'BooleanLiteral';

const asked = process.argv.slice(2);
const files = (asked.length > 0 ? asked : ['libs/estimating']).flatMap(sources);
makeCopy();
files.forEach(writeSwitches);
process.exitCode = runTester();
report();

function sources(path) {
  if (statSync(join(root, path)).isFile()) return [path];
  return readdirSync(join(root, path), { recursive: true })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => join(path, name));
}

function makeCopy() {
  rmSync(copy, { recursive: true, force: true });
  mkdirSync(copy, { recursive: true });
  for (const part of [...COPIED, 'package.json', 'tsconfig.json']) {
    cpSync(join(root, part), join(copy, part), { recursive: true });
  }
  symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'));
}

function writeSwitches(path) {
  const text = readFileSync(join(root, path), 'utf8');
  const changes = changesIn(ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true));
  const switched = changes
    .sort((a, b) => b.from - a.from)
    .reduce((done, { from, to, by }) => done.slice(0, from) + by + done.slice(to), text);
  writeFileSync(join(copy, path), switched);
}

/** Switches for numbers, and `as const` left out, under which the tester changes nothing. */
function changesIn(node) {
  if (ts.isLiteralTypeNode(node)) return [];
  if (ts.isNumericLiteral(node)) {
    if (node.parent.name === node) return [];
    return [{ from: node.getStart(), to: node.end, by: switchOf(node) }];
  }
  const found = [];
  ts.forEachChild(node, (child) => void found.push(...changesIn(child)));
  if (ts.isAsExpression(node) && ts.isConstTypeReference(node.type)) {
    found.push({ from: node.expression.end, to: node.end, by: '' });
  }
  return found;
}

function switchOf(node) {
  const value = Number(node.text);
  const other = Number.isInteger(value) && value <= 12 ? value + 1 : value * 1.01;
  return `(true ? ${node.getText()} : ${other})`;
}

function runTester() {
  const config = JSON.parse(
    readFileSync(join(root, '.config/mutation/stryker.config.json'), 'utf8'),
  );
  const settings = {
    ...config,
    inPlace: true,
    mutate: files,
    mutator: { excludedMutations: mutatorsBut(TURNED) },
    reporters: ['json', 'progress-append-only'],
    thresholds: { ...config.thresholds, break: null },
  };
  writeFileSync(join(copy, 'stryker.config.json'), JSON.stringify(settings));
  const stryker = join(root, 'node_modules/@stryker-mutator/core/bin/stryker.js');
  return spawnSync(process.execPath, [stryker, 'run'], { cwd: copy, stdio: 'inherit' }).status ?? 1;
}

function mutatorsBut(kept) {
  const all = ['ArithmeticOperator', 'ArrayDeclaration', 'ArrowFunction', 'AssignmentOperator'];
  all.push('BlockStatement', 'BooleanLiteral', 'ConditionalExpression', 'EqualityOperator');
  all.push('LogicalOperator', 'MethodExpression', 'ObjectLiteral', 'OptionalChaining', 'Regex');
  all.push('StringLiteral', 'UnaryOperator', 'UpdateOperator');
  return all.filter((name) => name !== kept);
}

/** Numbers changed and noticed in each folder, and where one was changed unnoticed. */
function report() {
  const made = JSON.parse(readFileSync(join(copy, '.out/mutation/estimating.json'), 'utf8'));
  const folders = new Map();
  for (const [path, { source, mutants }] of Object.entries(made.files)) {
    const lines = source.split('\n');
    const folder = path.split('/').slice(0, 3).join('/');
    for (const { location, status } of mutants) {
      const { line, column } = location.start;
      const rest = lines[line - 1].slice(column - 1);
      const [, number, other] = /^true \? (\S+) : (\S+?)\)/.exec(rest) ?? [];
      if (number === undefined) continue;
      const sum = folders.get(folder) ?? { changed: 0, noticed: 0, unnoticed: [] };
      folders.set(folder, sum);
      sum.changed += 1;
      if (status === 'Killed' || status === 'Timeout') sum.noticed += 1;
      else sum.unnoticed.push(`${path}:${line} ${number} -> ${other} (${status})`);
    }
  }
  for (const [folder, { changed, noticed, unnoticed }] of folders) {
    console.log(`${folder}: ${changed} numbers changed, ${noticed} noticed`);
    for (const place of unnoticed) console.log(`  ${place}`);
  }
}
