import type { SiteDossier } from '#explain/documents/dossier/site-dossier.js';
import { dayInWords } from '#units/dates-in-words.js';
import { bold } from '../document/inline.js';
import { fact, keyFacts } from '../document/key-facts.js';
import type { Block } from '../document/plan-document.js';
import { row, table, textColumn } from '../document/table.js';
import { heading, paragraph } from '../document/text-blocks.js';
import { GATE_WORDS, STATUS_WORDS } from '../parts/gate-words.js';

/** What is known, since when, by whom and how; what is not known is said to be so. */
export function evidenceBlocks(dossier: SiteDossier): readonly Block[] {
  return [
    heading(1, 'Evidence'),
    keyFacts(
      dossier.facts.map(({ label, value }) => fact(label, value ?? [bold('not known')])),
      2,
    ),
    gateTable(dossier),
    observationTable(dossier),
    ...bearingBlocks(dossier),
  ];
}

function gateTable({ gates }: SiteDossier): Block {
  if (gates.length === 0) return paragraph('No gate is recorded for this site.');
  return table({
    caption: 'Gates: a test that no score outweighs',
    density: 'compact',
    columns: [
      textColumn('Gate', 1.6),
      textColumn('Status', 1),
      textColumn('What was found', 4),
      textColumn('Who decides', 3.4),
    ],
    rows: gates.map(({ kind, status, note, clearedBy }) =>
      row(
        GATE_WORDS[kind],
        status === 'pass' ? STATUS_WORDS.pass : [bold(STATUS_WORDS[status])],
        note,
        clearedBy,
      ),
    ),
  });
}

function observationTable({ evidence }: SiteDossier): Block {
  if (evidence.length === 0) return paragraph('No observation is on record.');
  return table({
    caption: 'Observations on record',
    density: 'compact',
    columns: [
      textColumn('Of', 1.6),
      textColumn('Found', 2.8),
      textColumn('How, and by whom', 3),
      textColumn('Date', 1.6),
    ],
    rows: evidence.map(({ fact: of, value, method, observer, date, expires, expired }) =>
      row(of, value, `${method}; ${observer}`, [
        { text: dayInWords(date) },
        ...(expires === undefined
          ? []
          : [
              expired
                ? bold(`; expired ${dayInWords(expires)}`)
                : { text: `; good to ${dayInWords(expires)}` },
            ]),
      ]),
    ),
  });
}

function bearingBlocks({ bearings }: SiteDossier): readonly Block[] {
  if (bearings.length === 0) return [];
  return [
    table({
      caption: 'Works, order, promises and remarks',
      density: 'compact',
      columns: [textColumn('What bears on the site', 6), textColumn('Source', 3)],
      rows: bearings.map(({ sentence, source }) => row(sentence, source)),
    }),
  ];
}
