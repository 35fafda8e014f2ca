import type { ReactNode } from 'react';
import { strings } from '../../../strings.data.js';
import type { FieldGroupProps } from './field-group.js';

const words = strings.edit;

/** What is known of the ground. A fact left empty stays unknown; it is never taken as zero. */
export function FactFields({ fields, set }: FieldGroupProps): ReactNode {
  return (
    <fieldset className="group">
      <legend>{words.facts}</legend>
      <p className="quiet">{words.factsLead}</p>
      <div className="field-grid">
        {Object.entries(strings.record.factNames).map(([key, { name, unit }]) => {
          const field = `facts.${key}`;
          const label = unit === '' ? name : `${name}, ${words.unitTyped(unit)}`;
          return (
            <label key={key} className="field stacked">
              {label}
              {key === 'truckAccess' ? (
                <select
                  value={fields[field] ?? ''}
                  onChange={(event) => set(field, event.target.value)}
                >
                  <option value="">{strings.record.unknown}</option>
                  <option value="yes">{strings.record.yes}</option>
                  <option value="no">{strings.record.no}</option>
                </select>
              ) : (
                <input
                  value={fields[field] ?? ''}
                  placeholder={strings.record.unknown}
                  onChange={(event) => set(field, event.target.value)}
                />
              )}
            </label>
          );
        })}
      </div>
    </fieldset>
  );
}
