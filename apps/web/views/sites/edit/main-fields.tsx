import type { ReactNode } from 'react';
import { Checks, ChoiceField, named, TextField, type Option } from '../../../parts/fields.js';
import { strings } from '../../../strings.data.js';
import { shortYear, yearsOf } from '../../plan/years.js';
import type { FieldGroupProps } from './field-group.js';

const words = strings.edit;

/** Name, zone, area, build types and years of a site; only the fields that this kind of site has. */
export function MainFields({ file, fields, set }: FieldGroupProps): ReactNode {
  const shared = (field: string) => ({
    label: words.fieldName(field),
    value: fields[field] ?? '',
    onText: (text: string) => set(field, text),
  });
  const years: readonly Option[] = [
    ['', words.anyYear],
    ...yearsOf(file).map((year) => [year, shortYear(year)] as const),
  ];
  const choices: readonly (readonly [string, readonly Option[] | null])[] = [
    ['name', null],
    ['zone', named(file.zones)],
    ['areaSqFt', null],
    ['areaConfirmed', areaChoices],
    ['earliest', years],
    ['latest', years],
    ['costFactor', null],
    ['buildType', named(file.buildTypes)],
    ['plantedCalendarYear', null],
  ];
  return (
    <div className="field-grid">
      {choices
        .filter(([field]) => fields[field] !== undefined)
        .map(([field, options]) =>
          options === null ? (
            <TextField key={field} {...shared(field)} />
          ) : (
            <ChoiceField key={field} options={options} {...shared(field)} />
          ),
        )}
      {fields['buildTypes'] !== undefined && (
        <Checks
          legend={words.fieldName('buildTypes')}
          chosen={fields['buildTypes'].split(/\s*,\s*/).filter((id) => id !== '')}
          options={named(file.buildTypes)}
          onToggle={(next) => set('buildTypes', next.join(', '))}
        />
      )}
    </div>
  );
}

const areaChoices: readonly Option[] = [
  ['', words.areaNotConfirmed],
  ['yes', words.areaConfirmed],
];
