import type { ReactNode } from 'react';
import { dateInWords } from '../../../format/numbers.js';
import { DataTable, type Column } from '../../../parts/data-table.js';
import { strings } from '../../../strings.data.js';
import type { AnySite } from '../site-rows.js';

const words = strings.record;

const columns: readonly Column[] = [
  { head: words.fact, kind: 'name' },
  { head: words.value, kind: 'words' },
  { head: words.method, kind: 'words' },
  { head: words.observer, kind: 'words' },
  { head: words.date, kind: 'text' },
  { head: words.expires, kind: 'text' },
];

/** Says who, when and how. */
export function EvidenceTable({ site }: { readonly site: AnySite }): ReactNode {
  return (
    <section aria-labelledby="record-evidence">
      <h3 id="record-evidence">{words.evidence}</h3>
      {site.evidence.length === 0 ? (
        <p>{words.noEvidence}</p>
      ) : (
        <DataTable
          caption={words.evidenceCaption}
          columns={columns}
          rows={site.evidence.map((row, index) => ({
            key: String(index),
            cells: [
              row.fact,
              row.value,
              row.method,
              row.observer,
              dateInWords(row.date),
              row.expires === undefined ? words.noExpiry : dateInWords(row.expires),
            ],
          }))}
        />
      )}
    </section>
  );
}
