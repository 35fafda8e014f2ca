import type { Option } from '#report/document/boxes.js';
import type { Fact } from '#report/document/key-facts.js';
import type { Piece } from '../pieces/piece.js';
import { spaced } from '../pieces/piece.js';
import type { Tag } from '../tags/tag-tree.js';
import { styledRuns } from '../text/styled-text.js';
import { emboldened, TYPE } from '../text/type-styles.js';
import { boxParagraph } from './callout.js';
import type { LayoutContext } from './layout-context.js';
import { within } from './layout-context.js';
import { listPieces } from './list.js';
import { textPieces } from './text-pieces.js';

/** The parts of one option that line up with those of its neighbors. */
export type Sections = readonly (readonly Piece[])[];

/** Title, summary, `factCount` facts (blank after its own) and points of one option. */
export function optionSections(
  option: Option,
  factCount: number,
  context: LayoutContext,
): Sections {
  const parent = context.tags.add(context.parent, 'Div');
  const inner = within(context, { parent });
  const title = boxParagraph(option.title, TYPE.boxTitle, inner);
  const summary = boxParagraph(option.summary, TYPE.boxText, inner);
  const facts = factSections(option.facts, inner);
  const blank = Array.from({ length: factCount - facts.length }, () => []);
  const points = option.points.length === 0 ? [] : pointPieces(option, inner);
  return [title, spaced(summary, 3), ...facts, ...blank, points];
}

function factSections(facts: readonly Fact[], context: LayoutContext): Sections {
  if (facts.length === 0) return [];
  const attributes = { O: 'List', ListNumbering: 'None' };
  const list = context.tags.add(context.parent, 'L', { attributes });
  return facts.map((fact) => factPieces(fact, list, context));
}

function factPieces(fact: Fact, list: Tag, context: LayoutContext): readonly Piece[] {
  const item = context.tags.add(list, 'LI');
  const label = context.tags.add(item, 'Lbl');
  const body = context.tags.add(item, 'LBody');
  const small = TYPE.factLabel;
  const value = emboldened(TYPE.factValue);
  return [
    ...spaced(textPieces(context, { tag: label, ...plain(fact.label, small) }), 6),
    ...textPieces(context, { tag: body, runs: styledRuns(fact.value, value), style: value }),
  ];
}

function plain(text: string, style: typeof TYPE.factLabel) {
  return { runs: [{ text, style }], style };
}

function pointPieces(option: Option, context: LayoutContext): readonly Piece[] {
  const list = { kind: 'list', marker: 'bullet', items: option.points } as const;
  return listPieces(list, context, { style: TYPE.boxText, indent: 11 });
}
