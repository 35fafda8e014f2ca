import type { SiteDossier } from '#explain/documents/dossier/site-dossier.js';
import { counted, dollarsInWords, squareFeetInWords } from '#units/in-words.js';
import { callout } from '../document/boxes.js';
import { bold, type Inline } from '../document/inline.js';
import { fact, keyFacts } from '../document/key-facts.js';
import type { Block } from '../document/plan-document.js';
import { paragraph } from '../document/text-blocks.js';
import { costBandFigure } from '../figures/cost-band-figure.js';
import { firstSentence } from '../parts/first-sentence.js';
import { ESTIMATE_CLASS } from '../parts/words.js';
import { sketchFigure } from '../parts/sketch.js';

/** What it is, where it is, what it may cost, and what is open. */
export function firstPage(dossier: SiteDossier): readonly Block[] {
  return [
    paragraph(...standing(dossier)),
    keyFacts(
      [
        fact('Zone', dossier.zone),
        fact('Area', squareFeetInWords(dossier.areaSqFt)),
        fact('As planned', dossier.buildType),
        fact('Could also be', dossier.otherTypes.join('; ') || 'nothing else'),
      ],
      2,
    ),
    openBox(dossier),
    sketchFigure(dossier),
    costBandFigure({
      title: `Build cost, AACE class 5, ${dossier.cost.dollarsOf} dollars`,
      ...dossier.cost,
      words: dollarsInWords,
      note: ESTIMATE_CLASS,
    }),
  ];
}

function standing({ planned, gates }: SiteDossier): (string | ReturnType<typeof bold>)[] {
  const open = gates.filter(({ status }) => status !== 'pass').length;
  const gate =
    open === 0
      ? ' Every gate on record is passed; utility marks and a site walk still come first.'
      : ` Not cleared: ${counted(open, 'gate is', 'gates are')} not passed.`;
  if (!planned) {
    return [bold('Not in this plan.'), ` Told as if it were prepared in the first year.${gate}`];
  }
  const { prepared, planted, change } = planned;
  const later = change === undefined ? '' : ` ${change}`;
  return [bold(`Planned to be prepared in ${prepared} and planted in ${planted}.`), later + gate];
}

function openBox({ openQuestions, cautions }: SiteDossier): Block {
  const lines: Inline[] = openQuestions.map(({ what, consequence, clearedBy }) => [
    { text: '☐ ' },
    { text: `${what} ${consequence} ` },
    bold(`${firstSentence(clearedBy)}.`),
  ]);
  if (lines.length > 0) return callout('note', 'Open questions, and who settles them', lines);
  const rest = cautions.length > 0 ? ' The cautions on the last page stand.' : '';
  return callout('note', 'Open questions', [`None is recorded.${rest}`]);
}
