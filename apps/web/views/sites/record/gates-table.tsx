import type { ReactNode } from 'react';
import { DataTable, type Column } from '../../../parts/data-table.js';
import { strings } from '../../../strings.data.js';
import type { AnySite } from '../site-rows.js';

const words = strings.record;

const columns: readonly Column[] = [
  { head: words.gate, kind: 'head' },
  { head: words.status, kind: 'text' },
  { head: words.gateNote, kind: 'words' },
  { head: words.clearedBy, kind: 'words' },
];

/** Screening gates: each passes, fails or is unknown; none is weighed against another. */
export function GatesTable({ site }: { readonly site: AnySite }): ReactNode {
  if (site.gates.length === 0) return <p>{words.noGates}</p>;
  return (
    <DataTable
      caption={words.gatesCaption}
      columns={columns}
      rows={site.gates.map((gate, index) => ({
        key: `${gate.kind} ${index}`,
        cells: [
          words.gateNames[gate.kind],
          <strong key="status">{words.statuses[gate.status]}</strong>,
          gate.note,
          gate.clearedBy,
        ],
      }))}
    />
  );
}
