/**
 * The clauses of PDF/UA-1 (ISO 14289-1:2014) that a file of ours can break, one test each, named
 * by clause. No validator is at hand, so each is asserted on the bytes with pdfjs, pdf-lib and,
 * where the machine has them, qpdf and pdfinfo. Clause numbers are from memory of the standard.
 */
import { beforeAll, expect, test } from 'vitest';
import { PDFName } from 'pdf-lib';
import type { PDFDict } from 'pdf-lib';
import { renderPdf } from '#report-pdf/render-pdf.js';
import { pageMarks } from '../support/pdf/content-marks.js';
import type { PageMarks } from '../support/pdf/content-marks.js';
import { runOn } from '../support/pdf/outside-tools.js';
import {
  dictionary,
  entry,
  members,
  rawPdf,
  streamText,
  withName,
} from '../support/pdf/raw-objects.js';
import type { RawPdf } from '../support/pdf/raw-objects.js';
import { element, structTree } from '../support/pdf/struct-tree.js';
import type { TreeElement } from '../support/pdf/struct-tree.js';
import { readPdf } from '../support/pdf-reading.js';
import type { ReadPdf } from '../support/pdf-reading.js';
import { documentOf, sampleBlocks } from '../support/sample-document.js';
import { careFigure, mapFigure, sampleFigures, stripFigure } from '../support/sample-figures.js';

const blocks = [...sampleBlocks, ...sampleFigures];
const awkward = { program: 'Grounds & <Gardens> "Łódź"', title: 'Brief & outlook' };
let bytes: Uint8Array;
let raw: RawPdf;
let read: ReadPdf;
let tree: readonly TreeElement[];
let all: readonly TreeElement[];
let marks: readonly PageMarks[];

beforeAll(async () => {
  bytes = await renderPdf(documentOf(blocks, awkward));
  raw = await rawPdf(bytes);
  read = await readPdf(bytes);
  tree = structTree(raw);
  all = tree.flatMap(withDescendants);
  marks = raw.file
    .getPages()
    .map((page) => pageMarks(streamText(raw, page.node.get(PDFName.of('Contents')))));
});

const withDescendants = (element: TreeElement): readonly TreeElement[] => [
  element,
  ...element.children.flatMap(withDescendants),
];
const of = (role: string) => all.filter((element) => element.role === role);
const roles = (elements: readonly TreeElement[]) => new Set(elements.map(({ role }) => role));

test('5 version identification: the metadata name part 1 of PDF/UA', () => {
  expect(read.xmp).toContain('xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/"');
  expect(read.xmp).toContain('<pdfuaid:part>1</pdfuaid:part>');
});

test('7.1 the file is marked as tagged and free of suspects', () => {
  const info = dictionary(raw.catalog, 'MarkInfo')!;
  expect(entry(info, 'Marked')).toBe('true');
  expect(entry(info, 'Suspects')).not.toBe('true');
});

test('7.1 everything painted is tagged content or an artifact, and neither is inside the other', () => {
  for (const page of marks) {
    expect(page.unmarked).toEqual([]);
    expect(page.nested).toEqual([]);
    expect(page.balanced).toBe(true);
    expect(page.mcids.length).toBeGreaterThan(0);
  }
});

test('7.1 every piece of tagged content belongs to exactly one element', () => {
  const owned = all.flatMap((element) => element.content);
  const drawn = raw.file
    .getPages()
    .flatMap((page, index) =>
      marks[index]!.mcids.map((mcid) => `p${page.ref.objectNumber}R_mc${mcid}`),
    );
  expect(new Set(owned).size).toBe(owned.length);
  expect([...owned].sort()).toEqual([...drawn].sort());
});

test('7.1 the parent tree leads from each piece of content back to its element', () => {
  const parentTree = dictionary(dictionary(raw.catalog, 'StructTreeRoot')!, 'ParentTree')!;
  const numbers = members(parentTree, 'Nums');
  raw.file.getPages().forEach((page, index) => {
    const key = entry(page.node, 'StructParents');
    const at = numbers.findIndex((one, place) => place % 2 === 0 && one.toString() === key);
    const owners = members(raw.file.context.obj({ list: numbers[at + 1]! }), 'list') as PDFDict[];
    expect(owners).toHaveLength(marks[index]!.mcids.length);
    owners.forEach((owner, mcid) =>
      expect(element(owner).content).toContain(`p${page.ref.objectNumber}R_mc${mcid}`),
    );
  });
});

test('7.1 all structure types are standard types', () => {
  const standard =
    'Document Div P H1 H2 H3 H4 L LI Lbl LBody Table Caption THead TBody TR TH TD Figure';
  expect([...roles(all)].sort()).toEqual(standard.split(' ').sort());
  expect(tree.map(({ role }) => role)).toEqual(['Document']);
});

test('7.1 the title is in the metadata, escaped, and shown in the window', () => {
  expect(read.info['Title']).toBe('Brief & outlook');
  expect(read.xmp).toMatch(/<dc:title>.*Brief &#38; outlook<\/rdf:li>/);
  expect(read.xmp).toContain('Grounds &#38; &#60;Gardens&#62; &#34;Łódź&#34;');
  expect(entry(dictionary(raw.catalog, 'ViewerPreferences')!, 'DisplayDocTitle')).toBe('true');
});

test('7.2 the natural language is declared', () => {
  expect(entry(raw.catalog, 'Lang')).toBe('(en-US)');
});

test('7.2 elements of tables and lists are nested as they must be', () => {
  const inside = (role: string) => [...roles(of(role).flatMap(({ children }) => children))].sort();
  expect(inside('Table')).toEqual(['Caption', 'TBody', 'THead']);
  expect(inside('THead')).toEqual(['TR']);
  expect(inside('TBody')).toEqual(['TR']);
  expect(inside('TR')).toEqual(['TD', 'TH']);
  expect(inside('L')).toEqual(['LI']);
  expect(inside('LI')).toEqual(['LBody', 'Lbl']);
  for (const table of of('Table').filter(({ children }) => children.length > 2)) {
    expect(table.children.map(({ role }) => role)).toEqual(['Caption', 'THead', 'TBody']);
  }
});

test('7.3 each figure has its alternate text and its box, and its data table next to it', () => {
  const alts = [stripFigure, careFigure, mapFigure].map(({ alt }) => alt);
  expect(of('Figure').map(({ alt }) => alt)).toEqual(alts);
  expect(
    read.pages.flatMap((page) => page.alts).filter((alt, n, list) => list.indexOf(alt) === n),
  ).toEqual(alts);
  for (const figure of of('Figure'))
    expect(figure.attributes.get('BBox')).toMatch(/^\[ [\d. ]+ \]$/);
  const groups = of('Div').filter(({ children }) => children.some(({ role }) => role === 'Figure'));
  for (const group of groups) {
    expect(group.children.map(({ role }) => role)).toEqual(['Caption', 'Figure', 'Table']);
  }
});

test('7.4.2 headings start at H1 and skip no level', () => {
  const levels = all.filter(({ role }) => /^H\d$/.test(role)).map(({ role }) => Number(role[1]));
  expect(levels[0]).toBe(1);
  expect(levels.filter((level) => level === 1)).toHaveLength(1);
  levels.slice(1).forEach((level, index) => expect(level).toBeLessThanOrEqual(levels[index]! + 1));
});

test('7.5 each table header has a scope, and all rows of a table have as many cells', () => {
  for (const header of of('TH')) {
    expect(header.attributes.get('O')).toBe('/Table');
    expect(header.attributes.get('Scope')).toMatch(/^\/(Column|Row)$/);
  }
  for (const table of of('Table')) {
    const rows = table.children.flatMap(({ children }) => children);
    expect(new Set(rows.map(({ children }) => children.length)).size).toBe(1);
  }
});

test('7.6 each list says how it is numbered', () => {
  for (const list of of('L')) {
    expect(list.attributes.get('ListNumbering')).toMatch(/^\/(Decimal|Disc|Square|None)$/);
  }
});

test('7.8 the running footer is a pagination artifact and in no element', () => {
  for (const page of marks) expect(page.artifacts).toContain('Pagination');
  const tagged = JSON.stringify(read.structure);
  expect(
    read.pages.map(({ boxes }) => boxes.filter(({ text }) => /^Page \d of \d$/.test(text)).length),
  ).toEqual(read.pages.map(() => 1));
  expect(tagged).not.toMatch(/Page \d of/);
});

test('7.10, 7.11, 7.15, 7.16, 7.18, 7.19: no layers, files, forms, locks, annotations or scripts', () => {
  for (const key of ['OCProperties', 'AcroForm', 'AA', 'OpenAction']) {
    expect(entry(raw.catalog, key)).toBeUndefined();
  }
  expect(raw.file.context.trailerInfo.Encrypt).toBeUndefined();
  for (const page of raw.file.getPages()) {
    expect(entry(page.node, 'Annots')).toBeUndefined();
    expect(entry(page.node, 'Tabs')).toBe('/S');
  }
});

test('7.17 the outline has every heading below the title, in order', () => {
  const titles = (items: ReadPdf['outline']): string[] =>
    items.flatMap((item) => [item.title, ...titles(item.items)]);
  const headings = blocks.flatMap((block) => (block.kind === 'heading' ? [block.text] : []));
  expect(titles(read.outline)).toEqual(headings);
});

test('7.17 bookmarks are nested as the headings are', () => {
  const names = (items: ReadPdf['outline']) => items.map((item) => item.title);
  expect(names(read.outline)).toEqual(['Next site', 'All years', 'Care', 'Where']);
  expect(names(read.outline[0]!.items)).toEqual(['Costs', 'Alternatives']);
  expect(names(read.outline[0]!.items[1]!.items)).toEqual(['Sources']);
  expect(entry(dictionary(raw.catalog, 'Outlines')!, 'Count')).toBe('7');
});

test('7.21.4.1 every font is embedded, as a subset with a real bold and italic', () => {
  const fonts = withName(raw, 'Type', 'FontDescriptor');
  const names = fonts.map((font) => entry(font, 'FontName')!.replace(/^\/[A-Z]{6}\+/, ''));
  expect(names).toEqual(
    expect.arrayContaining([
      'SourceSerif4-Regular',
      'SourceSerif4-SemiBold',
      'SourceSerif4-Italic',
      'SourceSans3-Regular',
    ]),
  );
  for (const font of fonts) expect(font.has(PDFName.of('FontFile2'))).toBe(true);
  expect(withName(raw, 'Subtype', 'Type1')).toEqual([]);
  expect(withName(raw, 'Subtype', 'TrueType')).toEqual([]);
});

test('7.21.3.2 and 7.21.4.2: glyphs are found by identity and no partial glyph set is claimed', () => {
  const fonts = withName(raw, 'Subtype', 'CIDFontType2');
  expect(fonts.length).toBeGreaterThan(0);
  for (const font of fonts) expect(entry(font, 'CIDToGIDMap')).toBe('/Identity');
  for (const font of withName(raw, 'Type', 'FontDescriptor')) {
    expect(font.has(PDFName.of('CIDSet'))).toBe(false);
  }
});

test('7.21.7 every font maps to Unicode, never to 0, U+FEFF or U+FFFE', () => {
  for (const font of withName(raw, 'Subtype', 'Type0')) {
    const map = streamText(raw, font.get(PDFName.of('ToUnicode')));
    const targets = [...map.matchAll(/\[([^\]]*)\]/g)].flatMap(
      ([, list]) => list!.match(/[0-9a-f]{4}/g) ?? [],
    );
    expect(targets.length).toBeGreaterThan(0);
    for (const forbidden of ['0000', 'feff', 'fffe']) expect(targets).not.toContain(forbidden);
  }
});

test('7.21.8 the glyph for missing characters is never shown', () => {
  for (const page of marks) expect(page.glyphs.has('0000')).toBe(false);
});

test('qpdf finds no error and pdfinfo reads the tags', () => {
  const checked = runOn(bytes, 'qpdf', ['--check']);
  const structure = runOn(bytes, 'pdfinfo', ['-struct-text']);
  const absent = { qpdf: checked, pdfinfo: structure };
  const missing = Object.entries(absent)
    .filter(([, { kind }]) => kind === 'absent')
    .map(([name]) => name);
  if (missing.length > 0)
    console.log(`PDF: ${missing.join(', ')} not found; checked with pdfjs and pdf-lib alone.`);
  if (checked.kind === 'ran') expect(checked).toMatchObject({ status: 0 });
  if (structure.kind === 'ran') {
    expect(structure.output).not.toMatch(/error/i);
    expect(structure.output).toMatch(/Figure[^]*Table/);
  }
});
