import type { ReactNode } from 'react';
import type { CandidateSite } from '../../../api.js';
import { strings } from '../../../strings.data.js';
import type { FieldGroupProps } from './field-group.js';

const words = strings.edit;
type Gate = CandidateSite['gates'][number];

/** The screening gates: status, what was found, and what would clear each. */
export function GateFields({ fields, set }: FieldGroupProps): ReactNode {
  const gates = gatesIn(fields['gates'] ?? '[]');
  const put = (next: readonly Gate[]): void => set('gates', JSON.stringify(next));
  const change = (index: number, part: Partial<Gate>): void =>
    put(gates.map((gate, at) => (at === index ? { ...gate, ...part } : gate)));
  return (
    <fieldset className="group">
      <legend>{words.gates}</legend>
      {gates.map((gate, index) => (
        <GateRow
          key={`${gate.kind} ${index}`}
          gate={gate}
          onChange={(part) => change(index, part)}
          onRemove={() => put(gates.filter((_, at) => at !== index))}
        />
      ))}
      <label className="field">
        {words.addGate}
        <select
          value=""
          onChange={(event) => put([...gates, newGate(event.target.value as Gate['kind'])])}
        >
          <option value="">{words.chooseGate}</option>
          {Object.entries(strings.record.gateNames).map(([kind, name]) => (
            <option key={kind} value={kind}>
              {name}
            </option>
          ))}
        </select>
      </label>
    </fieldset>
  );
}

interface GateRowProps {
  readonly gate: Gate;
  readonly onChange: (part: Partial<Gate>) => void;
  readonly onRemove: () => void;
}

function GateRow({ gate, onChange, onRemove }: GateRowProps): ReactNode {
  const name = strings.record.gateNames[gate.kind];
  return (
    <div className="gate-row" role="group" aria-label={name}>
      <strong>{name}</strong>
      <label className="field stacked">
        {strings.record.status}
        <select
          value={gate.status}
          onChange={(event) => onChange({ status: event.target.value as Gate['status'] })}
        >
          {Object.entries(strings.record.statuses).map(([status, text]) => (
            <option key={status} value={status}>
              {text}
            </option>
          ))}
        </select>
      </label>
      <label className="field stacked grow">
        {strings.record.gateNote}
        <input value={gate.note} onChange={(event) => onChange({ note: event.target.value })} />
      </label>
      <label className="field stacked grow">
        {strings.record.clearedBy}
        <input
          value={gate.clearedBy}
          onChange={(event) => onChange({ clearedBy: event.target.value })}
        />
      </label>
      <button
        type="button"
        className="small"
        aria-label={words.removeGate(name)}
        onClick={onRemove}
      >
        {words.remove}
      </button>
    </div>
  );
}

/** A gate that was just named is unknown, and bars everything until it is looked at. */
function newGate(kind: Gate['kind']): Gate {
  return { kind, status: 'unknown', note: '', bars: 'all', clearedBy: '' };
}

function gatesIn(text: string): readonly Gate[] {
  return JSON.parse(text) as readonly Gate[];
}
