import type { ReactNode } from 'react';
import type { CampusFile } from '../../api.js';
import { ChoiceField, Radios, TextField } from '../../parts/fields.js';
import { strings } from '../../strings.data.js';
import type { Wish } from './wish.js';
import { shortYear, yearsOf } from './years.js';

const words = strings.change;

interface ChangeFormProps {
  readonly file: CampusFile;
  readonly wish: Wish;
  readonly isBusy: boolean;
  readonly onChange: (wish: Wish) => void;
  readonly onTry: () => void;
}

const kinds = (['fixed', 'forbidden', 'never', 'free'] as const).map(
  (kind) => [kind, words.kinds[kind]] as const,
);

/** Which site, what to do with it, when, and why. */
export function ChangeForm(props: ChangeFormProps): ReactNode {
  const { file, wish, isBusy, onChange, onTry } = props;
  const change = (part: Partial<Wish>): void => onChange({ ...wish, ...part });
  return (
    <form
      className="change-form"
      onSubmit={(event) => {
        event.preventDefault();
        if (!isBusy) onTry();
      }}
    >
      <ChoiceField
        id="change-site"
        label={words.site}
        need="required"
        unchosen={words.chooseSite}
        value={wish.site}
        options={file.candidateSites.map(({ id, name }) => [id, `${id} ${name}`])}
        onText={(site) => change({ site })}
      />
      <Radios
        legend={words.what}
        name="change-kind"
        value={wish.kind}
        options={kinds}
        onChoose={(kind) => change({ kind })}
      />
      {(wish.kind === 'fixed' || wish.kind === 'forbidden') && (
        <ChoiceField
          label={words.year}
          need="required"
          unchosen={words.chooseYear}
          value={wish.year}
          options={yearsOf(file).map((year) => [year, shortYear(year)])}
          onText={(year) => change({ year })}
        />
      )}
      {wish.kind !== 'free' && (
        <TextField
          label={words.reason}
          need="required"
          value={wish.reason}
          onText={(reason) => change({ reason })}
        />
      )}
      <button type="submit" className="primary" aria-disabled={isBusy}>
        {words.try}
      </button>
    </form>
  );
}
