import type { Gate } from '#domain/site.js';
import { documentText } from '../document/document-text.js';
import type { PlanDocument } from '../document/plan-document.js';
import { firstSentence } from '../parts/first-sentence.js';
import { GATE_WORDS } from '../parts/gate-words.js';
import type { ReleaseNeeds } from './release-needs.js';

/** What keeps a document from being called final. */
export interface ReleaseProblem {
  readonly missing: 'approval' | 'caution' | 'figure' | 'cost class' | 'record' | 'wording';
  readonly problem: string;
  readonly remedy: string;
}

/** A site that a document sends people to, with its gates. */
export interface ReleasedSite {
  readonly site: string;
  readonly gates: readonly Gate[];
}

export interface Release {
  /** Empty where nobody was named. */
  readonly approvedBy: string;
  /** Sites whose gates `needs.gates` asks for. */
  readonly sites: readonly ReleasedSite[];
}

/** All that is missing for a document to be final; empty where nothing is. */
export function releaseProblems(
  document: PlanDocument,
  needs: ReleaseNeeds,
  { approvedBy, sites }: Release,
): readonly ReleaseProblem[] {
  const text = documentText(document);
  return [
    ...(approvedBy.trim() === '' ? [NOBODY] : []),
    ...sites.flatMap(gateProblems),
    ...figureProblems(document, needs),
    ...cautionProblems(document, needs),
    ...(needs.signatures === 'asked for' && !document.blocks.some((b) => b.kind === 'signatures')
      ? [NO_SIGNATURES]
      : []),
    ...(needs.costs === 'class 5' && text.includes('$') && !/class 5/i.test(text)
      ? [NO_CLASS]
      : []),
    ...(needs.readers === 'givers' ? promiseProblems(text) : []),
    ...(needs.actuals === 'told' && text.includes('not recorded') ? [NO_ACTUALS] : []),
  ];
}

const NOBODY: ReleaseProblem = {
  missing: 'approval',
  problem: 'Nobody is named who approved it.',
  remedy: 'Name the person with --approved-by.',
};

const NO_SIGNATURES: ReleaseProblem = {
  missing: 'approval',
  problem: 'It has no lines to sign.',
  remedy: 'Report it as a defect of the program.',
};

const NO_CLASS: ReleaseProblem = {
  missing: 'cost class',
  problem: 'It shows costs without the class of the estimate.',
  remedy: 'Report it as a defect of the program.',
};

const NO_ACTUALS: ReleaseProblem = {
  missing: 'record',
  problem: 'What happened is not on record.',
  remedy: 'Keep it a draft until the year is closed and its actual values are entered.',
};

function gateProblems({ site, gates }: ReleasedSite): ReleaseProblem[] {
  return gates
    .filter(({ status }) => status !== 'pass')
    .map(({ kind, note, clearedBy }) => ({
      missing: 'approval',
      problem: `${site}, ${GATE_WORDS[kind].toLowerCase()}: not passed. ${note}`,
      remedy: `${firstSentence(clearedBy)}.`,
    }));
}

function figureProblems({ blocks }: PlanDocument, needs: ReleaseNeeds): ReleaseProblem[] {
  const figures = blocks.filter((block) => block.kind === 'figure');
  const told = figures.filter(({ alt, table }) => alt.trim() !== '' && table.rows.length > 0);
  if (told.length >= needs.figures) return [];
  return [
    {
      missing: 'figure',
      problem: `It has ${told.length} of ${needs.figures} figures with words and a data table.`,
      remedy: 'A plan with no site has no figure: keep it a draft.',
    },
  ];
}

function cautionProblems({ blocks }: PlanDocument, needs: ReleaseNeeds): ReleaseProblem[] {
  const boxed = blocks.some((block) => block.kind === 'callout' && block.tone === 'caution');
  if (needs.cautions === 'none' || boxed) return [];
  return [
    {
      missing: 'caution',
      problem: 'No caution stands where the work is told.',
      remedy: 'A plan that prepares no site in its first year has none: keep it a draft.',
    },
  ];
}

/** To givers nothing is promised: `planned for`, never `will`. */
function promiseProblems(text: string): ReleaseProblem[] {
  const line = text.split('\n').find((one) => /\bwill\b/i.test(one));
  if (line === undefined) return [];
  return [
    {
      missing: 'wording',
      problem: `It promises with the word “will”: “${line}”`,
      remedy: 'Change the name or remark in the campus file that says so.',
    },
  ];
}
