import { useState, type ReactNode } from 'react';
import { strings } from '../../../strings.data.js';
import type { AnySite } from '../site-rows.js';
import {
  differences,
  fieldsOf,
  siteWith,
  usualChoice,
  type FieldDifference,
  type Fields,
} from './site-fields.js';

const words = strings.edit;

interface MergeVersionsProps {
  readonly base: AnySite;
  readonly theirs: AnySite;
  readonly mine: Fields;
  readonly version: number;
  readonly onSave: (site: AnySite, version: number) => void;
}

/** Two people changed one site: each field in which they differ, for a person to choose. */
export function MergeVersions(props: MergeVersionsProps): ReactNode {
  const { base, theirs, mine, version, onSave } = props;
  const rows = differences(fieldsOf(base), fieldsOf(theirs), mine);
  const [choices, setChoices] = useState<Readonly<Record<string, 'theirs' | 'mine'>>>({});
  const choiceOf = (row: FieldDifference): 'theirs' | 'mine' =>
    choices[row.field] ?? usualChoice(row);
  const merged = (): AnySite => {
    const chosen = rows.filter((row) => choiceOf(row) === 'mine');
    return siteWith(
      theirs,
      Object.fromEntries(chosen.map(({ field, mine: text }) => [field, text])),
    );
  };
  return (
    <form
      className="merge"
      onSubmit={(event) => {
        event.preventDefault();
        onSave(merged(), version);
      }}
    >
      <h3>{words.conflict}</h3>
      <p>{words.conflictLead}</p>
      {rows.length === 0 && <p>{words.conflictSame}</p>}
      {rows.map((row) => (
        <fieldset key={row.field} className="merge-field">
          <legend>{words.fieldName(row.field)}</legend>
          <p className="quiet">{words.was(shown(row.base))}</p>
          {(['theirs', 'mine'] as const).map((whose) => (
            <label key={whose}>
              <input
                type="radio"
                name={`merge ${row.field}`}
                checked={choiceOf(row) === whose}
                onChange={() => setChoices({ ...choices, [row.field]: whose })}
              />
              <span>
                {words.whose[whose]} <strong>{shown(row[whose])}</strong>
              </span>
            </label>
          ))}
        </fieldset>
      ))}
      <button type="submit" className="primary">
        {words.saveMerged}
      </button>
    </form>
  );
}

const LONGEST = 160;

/** A long text (a boundary) is told by its beginning and its length. */
function shown(text: string): string {
  if (text === '') return words.empty;
  if (text.length <= LONGEST) return text;
  return words.longText(text.slice(0, LONGEST), text.length);
}
