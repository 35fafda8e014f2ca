import type { ReactNode } from 'react';
import type { CampusFile } from '../../api.js';
import { Checks, ChoiceField, LongTextField, named, TextField } from '../../parts/fields.js';
import { strings } from '../../strings.data.js';
import { shortYear, yearsOf } from '../plan/years.js';
import { FIRST_GATES, type SixFacts } from './new-site.js';

const words = strings.setUp;

interface SixFactsFormProps {
  readonly file: CampusFile;
  readonly facts: SixFacts;
  readonly isSaving: boolean;
  readonly onFacts: (facts: SixFacts) => void;
  readonly onSave: (facts: SixFacts) => void;
}

const gates = FIRST_GATES.map((kind) => [kind, strings.record.gateNames[kind]] as const);

/** As the api takes it; a hyphen stands escaped, as patterns of a browser want it. */
const idForm = { pattern: String.raw`[A-Za-z0-9][A-Za-z0-9._\-]{0,59}`, words: words.idForm };

/** Six facts of a site; summer hours and cost follow from the build type until they are known better. */
export function SixFactsForm(props: SixFactsFormProps): ReactNode {
  const { file, facts, isSaving, onFacts, onSave } = props;
  return (
    <form
      aria-label={words.addSite}
      onSubmit={(event) => {
        event.preventDefault();
        if (!isSaving) onSave(facts);
      }}
    >
      <Facts file={file} facts={facts} onFacts={onFacts} />
      <Checks
        legend={words.gates}
        chosen={facts.passed}
        options={gates}
        onToggle={(passed) => onFacts({ ...facts, passed })}
      />
      <LongTextField
        label={words.boundary}
        rows={3}
        value={facts.boundary}
        onText={(boundary) => onFacts({ ...facts, boundary })}
      />
      <p className="quiet">{words.hoursAndCost}</p>
      <button type="submit" className="primary" aria-disabled={isSaving}>
        {words.saveSite}
      </button>
    </form>
  );
}

function Facts({ file, facts, onFacts }: Pick<SixFactsFormProps, 'file' | 'facts' | 'onFacts'>) {
  const field = (key: Exclude<keyof SixFacts, 'passed'>) => ({
    need: 'required' as const,
    value: facts[key],
    onText: (text: string) => onFacts({ ...facts, [key]: text }),
  });
  const unchosen = words.choose;
  const years = yearsOf(file).map((year) => [year, shortYear(year)] as const);
  return (
    <div className="field-grid">
      <TextField label={words.id} form={idForm} {...field('id')} />
      <TextField label={words.name} {...field('name')} />
      <ChoiceField
        label={words.zone}
        options={named(file.zones)}
        {...{ unchosen }}
        {...field('zone')}
      />
      <TextField label={words.area} {...field('areaSqFt')} />
      <ChoiceField
        label={words.buildType}
        options={named(file.buildTypes)}
        {...{ unchosen }}
        {...field('buildType')}
      />
      <ChoiceField
        label={words.earliest}
        options={years}
        {...{ unchosen }}
        {...field('earliest')}
      />
      <TextField label={words.costFactor} {...field('costFactor')} />
    </div>
  );
}
