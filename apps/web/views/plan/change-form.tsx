import type { ReactNode } from 'react';
import type { CampusFile, HandPlacement } from '../../api.js';
import { ChoiceField, Radios, TextField } from '../../parts/fields.js';
import { strings } from '../../strings.data.js';
import { shortYear, yearsOf } from './years.js';

const words = strings.change;

/** What a person wants to try, as it is typed; kept until it is tried. */
export interface Wish {
  readonly site: string;
  readonly kind: 'fixed' | 'forbidden' | 'never' | 'free';
  readonly year: string;
  readonly reason: string;
}

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

/** The hand placements of the site with the wish put in. */
export function placementsWith(wish: Wish, file: CampusFile): readonly HandPlacement[] {
  const own = file.handPlacements
    .filter(({ site }) => site === wish.site)
    .map(({ site: _site, ...placement }) => placement);
  const { year, reason } = wish;
  switch (wish.kind) {
    case 'free':
      return [];
    case 'fixed':
      return [{ kind: 'fixed', year, reason }];
    case 'never':
      return [{ kind: 'forbidden', reason }];
    case 'forbidden':
      return [
        ...own.filter((row) => row.kind === 'forbidden' && row.year !== year && row.year),
        { kind: 'forbidden', year, reason },
      ];
  }
}
