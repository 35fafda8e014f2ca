import type { PlanDocument } from '#report/document/plan-document.js';
import type { Piece } from '../pieces/piece.js';
import { piece, spaced, together } from '../pieces/piece.js';
import type { TypeStyle } from '../text/type-styles.js';
import { TYPE } from '../text/type-styles.js';
import type { LayoutContext } from './layout-context.js';
import { textPieces } from './text-pieces.js';
import { statusWords } from '../page/status-words.js';

/** The head of the first page: program, title (H1), subject, plan version, data date, status. */
export function titlePieces(document: PlanDocument, context: LayoutContext): readonly Piece[] {
  const facts = [
    `Plan version ${document.planVersion}`,
    `Data as of ${document.dataDate}`,
    statusWords(document.status),
  ];
  return together([
    ...lines(context, { type: 'P', text: document.program, style: TYPE.program, gap: 0 }),
    ...lines(context, { type: 'H1', text: document.title, style: TYPE.title, gap: 8 }),
    ...lines(context, { type: 'P', text: document.subject, style: TYPE.subject, gap: 6 }),
    rulePiece(context, { color: 'accent', width: 1.5 }, 12),
    ...lines(context, { type: 'P', text: facts.join('  ·  '), style: TYPE.titleFacts, gap: 5 }),
    rulePiece(context, { color: 'faint', width: 0.5 }, 5),
  ]);
}

interface TitleLine {
  readonly type: 'P' | 'H1';
  readonly text: string;
  readonly style: TypeStyle;
  readonly gap: number;
}

function lines(context: LayoutContext, line: TitleLine): readonly Piece[] {
  const tag = context.tags.add(context.parent, line.type);
  const runs = [{ text: line.text, style: line.style }];
  return spaced(textPieces(context, { tag, runs, style: line.style }), line.gap);
}

type RuleLook = Parameters<LayoutContext['canvas']['drawRule']>[2];

function rulePiece({ canvas, tags, width }: LayoutContext, rule: RuleLook, gap: number): Piece {
  const draw: Piece['draw'] = (at) =>
    tags.artifact('Layout', () => canvas.drawRule(at, { x: at.x + width, y: at.y }, rule));
  return piece(rule.width, draw, { gap });
}
