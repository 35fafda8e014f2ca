import { useId, type ReactNode } from 'react';
import { WHOLE_YEAR } from '../charts/care-rows.js';
import { capitalized } from '../format/numbers.js';
import { strings } from '../strings.data.js';

interface SeasonPickerProps {
  /** Names of seasons, and WHOLE_YEAR where a whole year can be shown. */
  readonly choices: readonly string[];
  readonly choice: string;
  readonly onChoose: (choice: string) => void;
}

/** One season at a time, or the whole year. */
export function SeasonPicker({ choices, choice, onChoose }: SeasonPickerProps): ReactNode {
  const group = useId();
  return (
    <fieldset className="choices">
      <legend>{strings.care.choose}</legend>
      {choices.map((name) => (
        <label key={name}>
          <input
            type="radio"
            name={group}
            checked={choice === name}
            onChange={() => onChoose(name)}
          />
          {name === WHOLE_YEAR ? strings.care.year : capitalized(name)}
        </label>
      ))}
    </fieldset>
  );
}
