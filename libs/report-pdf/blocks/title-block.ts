import type { PlanDocument } from '#report/document/plan-document.js';
import type { Piece } from '../pieces/piece.js';
import { piece, spaced, together } from '../pieces/piece.js';
import type { StyledText } from '../text/styled-text.js';
import type { TypeStyle } from '../text/type-styles.js';
import { emboldened, TYPE } from '../text/type-styles.js';
import type { LayoutContext } from './layout-context.js';
import { textPieces } from './text-pieces.js';
import { statusWords } from '../page/status-words.js';

/** The head of the first page: program, title (H1), subject, plan version, data date, status. */
export function titlePieces(document: PlanDocument, context: LayoutContext): readonly Piece[] {
  const { program, title, subject } = document;
  return together([
    ...lines(context, { type: 'P', runs: [run(program, TYPE.program)], gap: 0 }),
    ...lines(context, { type: 'H1', runs: [run(title, TYPE.title)], gap: 8 }),
    ...lines(context, { type: 'P', runs: [run(subject, TYPE.subject)], gap: 6 }),
    rulePiece(context, { color: 'accent', width: 1.5 }, 12),
    ...lines(context, { type: 'P', runs: factRuns(document), gap: 5 }),
    rulePiece(context, { color: 'faint', width: 0.5 }, 5),
  ]);
}

function factRuns(document: PlanDocument): readonly StyledText[] {
  const { planVersion, dataDate } = document;
  return [
    run(`Plan version ${planVersion}  ·  Data as of ${dataDate}  ·  `, TYPE.titleFacts),
    run(statusWords(document), emboldened(TYPE.titleFacts)),
  ];
}

function run(text: string, style: TypeStyle): StyledText {
  return { text, style };
}

interface TitleLine {
  readonly type: 'P' | 'H1';
  readonly runs: readonly StyledText[];
  readonly gap: number;
}

function lines(context: LayoutContext, { type, runs, gap }: TitleLine): readonly Piece[] {
  const tag = context.tags.add(context.parent, type);
  const style = runs[0]?.style ?? TYPE.body;
  return spaced(textPieces(context, { tag, runs, style }), gap);
}

type RuleLook = Parameters<LayoutContext['canvas']['drawRule']>[2];

function rulePiece({ canvas, tags, width }: LayoutContext, rule: RuleLook, gap: number): Piece {
  const draw: Piece['draw'] = (at) =>
    tags.artifact('Layout', () => canvas.drawRule(at, { x: at.x + width, y: at.y }, rule));
  return piece(rule.width, draw, { gap });
}
