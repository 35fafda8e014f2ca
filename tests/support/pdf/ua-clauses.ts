/**
 * What a file breaks of PDF/UA-1 (ISO 14289-1:2014), read back with pdf-lib and pdfjs. Clause
 * numbers are from memory of the standard.
 */
import { PDFName } from 'pdf-lib';
import { elementText, readPdf, type Bookmark, type ReadPdf } from '../pdf-reading.js';
import { pageMarks, type PageMarks } from './content-marks.js';
import { dictionary, entry, rawPdf, streamText, withName, type RawPdf } from './raw-objects.js';
import { structTree, type TreeElement } from './struct-tree.js';
import type { StructureNode } from './structure.js';

interface UaFile {
  readonly raw: RawPdf;
  readonly read: ReadPdf;
  readonly all: readonly TreeElement[];
  readonly marks: readonly PageMarks[];
}

type Clause = (file: UaFile) => readonly unknown[];

/** One line for each breach; empty where the file keeps every clause that is looked at. */
export async function uaBreaches(bytes: Uint8Array): Promise<string[]> {
  const [raw, read] = [await rawPdf(bytes), await readPdf(bytes)];
  const marks = raw.file
    .getPages()
    .map((page) => pageMarks(streamText(raw, page.node.get(PDFName.of('Contents')))));
  const file = { raw, read, marks, all: structTree(raw).flatMap(withDescendants) };
  return Object.entries(CLAUSES).flatMap(([clause, breaches]) =>
    breaches(file).map((breach) => `${clause}: ${JSON.stringify(breach)}`),
  );
}

const MISSING = ['missing'];

const CLAUSES: Readonly<Record<string, Clause>> = {
  '5 metadata name the part': ({ read }) =>
    read.xmp.includes('<pdfuaid:part>1</pdfuaid:part>') ? [] : ['no part'],
  '7.1 file is marked as tagged': ({ raw }) => (flag(raw, 'MarkInfo', 'Marked') ? [] : MISSING),
  '7.1 all that is painted is marked, once': ({ marks }) =>
    marks.flatMap((page) => [
      ...page.unmarked,
      ...page.nested,
      ...(page.balanced ? [] : ['open mark']),
    ]),
  '7.1 content belongs to one element': ownership,
  '7.1 reading order follows the pages': readingOrder,
  '7.1 structure types are standard': ({ all }) =>
    all.map(({ role }) => role).filter((role) => !STANDARD.has(role)),
  '7.1 title is shown': ({ raw, read }) => [
    ...(flag(raw, 'ViewerPreferences', 'DisplayDocTitle') ? [] : MISSING),
    ...(/<dc:title>[^]*?<rdf:li[^>]*>[^<]+<\/rdf:li>/.test(read.xmp) ? [] : ['no dc:title']),
    ...(read.info['Title'] ? [] : ['no title']),
  ],
  '7.2 language': ({ raw }) => (entry(raw.catalog, 'Lang') === '(en-US)' ? [] : MISSING),
  '7.2 nesting': ({ all }) =>
    all.flatMap(({ role, children }) =>
      children.map((child) => child.role).filter((child) => NESTED[role]?.has(child) === false),
    ),
  '7.3 figures have words, a box and a table': figures,
  '7.4.2 headings skip no level': headings,
  '7.5 table headers have a scope': tables,
  '7.6 lists say their numbering': ({ all }) =>
    all.filter(({ role, attributes }) => role === 'L' && !attributes.has('ListNumbering')),
  '7.8 running matter is an artifact': ({ marks }) =>
    marks.flatMap(({ artifacts }, page) => (artifacts.includes('Pagination') ? [] : [page + 1])),
  '7.10 to 7.19 no layers, forms, actions, locks': ({ raw }) => [
    ...['OCProperties', 'AcroForm', 'AA', 'OpenAction'].filter((key) => entry(raw.catalog, key)),
    ...(raw.file.context.trailerInfo.Encrypt ? ['Encrypt'] : []),
  ],
  '7.17 bookmarks are the headings': bookmarks,
  '7.18.3 tab order is that of the structure': ({ raw }) =>
    raw.file.getPages().flatMap((page, n) => (entry(page.node, 'Tabs') === '/S' ? [] : [n + 1])),
  '7.21.4.1 fonts are embedded': ({ raw }) =>
    withName(raw, 'Type', 'FontDescriptor').filter((font) => !font.has(PDFName.of('FontFile2'))),
  '7.21.7 fonts map to Unicode': ({ raw }) =>
    withName(raw, 'Subtype', 'Type0').filter((font) => !font.has(PDFName.of('ToUnicode'))),
  '7.21.8 no glyph is missing': ({ marks }) => marks.filter(({ glyphs }) => glyphs.has('0000')),
};

const STANDARD = new Set(
  'Document Div P H1 H2 H3 H4 L LI Lbl LBody Table Caption THead TBody TR TH TD Figure'.split(' '),
);

const NESTED: Readonly<Record<string, ReadonlySet<string>>> = {
  Table: new Set(['Caption', 'THead', 'TBody']),
  THead: new Set(['TR']),
  TBody: new Set(['TR']),
  TR: new Set(['TH', 'TD']),
  L: new Set(['LI']),
  LI: new Set(['Lbl', 'LBody']),
};

function withDescendants(one: TreeElement): readonly TreeElement[] {
  return [one, ...one.children.flatMap(withDescendants)];
}

function flag(raw: RawPdf, key: string, name: string): boolean {
  const of = dictionary(raw.catalog, key);
  return of !== undefined && entry(of, name) === 'true';
}

function ownership({ raw, all, marks }: UaFile): string[] {
  const owned = all.flatMap(({ content }) => content);
  const drawn = raw.file
    .getPages()
    .flatMap(({ ref }, n) => marks[n]!.mcids.map((mcid) => `p${ref.objectNumber}R_mc${mcid}`));
  const [has, wants] = [new Set(owned), new Set(drawn)];
  return [
    ...owned.filter((one, n) => owned.indexOf(one) !== n).map((one) => `twice ${one}`),
    ...drawn.filter((one) => !has.has(one)).map((one) => `nobody's ${one}`),
    ...owned.filter((one) => !wants.has(one)).map((one) => `not drawn ${one}`),
  ];
}

/** Content in the order of the tree lies on pages that only go forward. */
function readingOrder({ raw, all }: UaFile): string[] {
  const pages = new Map(raw.file.getPages().map(({ ref }, n) => [`p${ref.objectNumber}R`, n]));
  const order = all.flatMap(({ content }) => content.map((one) => pages.get(one.split('_')[0]!)!));
  return order.flatMap((page, n) => (n > 0 && page < order[n - 1]! ? [`back to ${page + 1}`] : []));
}

function figures({ all }: UaFile): unknown[] {
  const groups = all.filter(({ children }) => children.some(({ role }) => role === 'Figure'));
  return [
    ...all.filter((one) => one.role === 'Figure' && !(one.alt && one.attributes.has('BBox'))),
    ...groups
      .map(({ children }) => children.map(({ role }) => role).join(' '))
      .filter((roles) => !/^Caption Figure Table( P)?$/.test(roles)),
  ];
}

function headings({ all }: UaFile): unknown[] {
  const levels = all.flatMap(({ role }) => (/^H\d$/.test(role) ? [Number(role[1])] : []));
  return [
    ...(levels[0] === 1 && levels.lastIndexOf(1) === 0 ? [] : ['not one H1 first']),
    ...levels.filter((level, n) => n > 0 && level > levels[n - 1]! + 1),
  ];
}

function tables({ all }: UaFile): unknown[] {
  const inTables = all.filter(({ role }) => role === 'Table');
  const widths = inTables.map(
    ({ children }) =>
      new Set(children.flatMap((part) => part.children.map((tr) => tr.children.length))),
  );
  return [
    ...all.filter(
      ({ role, attributes }) =>
        role === 'TH' && !/^\/(Column|Row)$/.test(attributes.get('Scope') ?? ''),
    ),
    ...inTables.filter((table) => !withDescendants(table).some(({ role }) => role === 'TH')),
    ...widths.filter(({ size }) => size > 1).map(() => 'uneven rows'),
  ];
}

function bookmarks({ read }: UaFile): unknown[] {
  const titles = (items: readonly Bookmark[]): string[] =>
    items.flatMap((item) => [item.title, ...titles(item.items)]);
  const nodes = (node: StructureNode): StructureNode[] => [node, ...node.children.flatMap(nodes)];
  const words = read.structure
    .flatMap(nodes)
    .filter(({ role }) => /^H[2-6]$/.test(role))
    .map((node) => elementText(node).replace(/\s+/g, ' ').trim());
  const named = titles(read.outline).map((title) => title.replace(/\s+/g, ' ').trim());
  return JSON.stringify(named) === JSON.stringify(words) ? [] : [{ named, words }];
}
