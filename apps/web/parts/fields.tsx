import type { ReactNode } from 'react';

interface FieldProps {
  readonly label: string;
  readonly value: string;
  readonly onText: (text: string) => void;
  readonly need?: 'required' | 'optional';
  /** What the text must look like, as a regular expression, and the same in words. */
  readonly form?: { readonly pattern: string; readonly words: string };
}

/** One line of text under its label. */
export function TextField({ label, value, onText, need, form }: FieldProps): ReactNode {
  return (
    <label className="field stacked">
      {label}
      <input
        required={need === 'required'}
        pattern={form?.pattern}
        title={form?.words}
        value={value}
        onChange={(event) => onText(event.target.value)}
      />
    </label>
  );
}

interface LongTextFieldProps extends FieldProps {
  readonly rows: number;
}

/** Several lines of text under their label. */
export function LongTextField(props: LongTextFieldProps): ReactNode {
  const { label, value, onText, need, rows } = props;
  return (
    <label className="field stacked">
      {label}
      <textarea
        required={need === 'required'}
        rows={rows}
        value={value}
        onChange={(event) => onText(event.target.value)}
      />
    </label>
  );
}

/** What is stored, and what a reader sees. */
export type Option = readonly [value: string, name: string];

interface ChoiceFieldProps extends FieldProps {
  readonly options: readonly Option[];
  /** Shown before a choice is made; left out: there always is one. */
  readonly unchosen?: string;
  readonly id?: string;
}

/** One of several, in a list. */
export function ChoiceField(props: ChoiceFieldProps): ReactNode {
  const { label, value, options, onText, need, unchosen, id } = props;
  return (
    <label className="field stacked">
      {label}
      <select
        id={id}
        required={need === 'required'}
        value={value}
        onChange={(event) => onText(event.target.value)}
      >
        {unchosen !== undefined && <option value="">{unchosen}</option>}
        {options.map(([option, name]) => (
          <option key={option} value={option}>
            {name}
          </option>
        ))}
      </select>
    </label>
  );
}

/** Records as the options of a list. */
export function named(rows: readonly { id: string; name: string }[]): readonly Option[] {
  return rows.map(({ id, name }) => [id, name]);
}

interface RadiosProps<Value extends string> {
  readonly legend: string;
  readonly name: string;
  readonly value: Value;
  readonly options: readonly (readonly [Value, string])[];
  readonly onChoose: (value: Value) => void;
}

/** One of a few, all in sight. */
export function Radios<Value extends string>(props: RadiosProps<Value>): ReactNode {
  const { legend, name, value, options, onChoose } = props;
  return (
    <fieldset className="choices">
      <legend>{legend}</legend>
      {options.map(([option, text]) => (
        <label key={option}>
          <input
            type="radio"
            name={name}
            checked={value === option}
            onChange={() => onChoose(option)}
          />
          {text}
        </label>
      ))}
    </fieldset>
  );
}

interface ChecksProps<Value extends string> {
  readonly legend: string;
  readonly chosen: readonly string[];
  readonly options: readonly (readonly [Value, string])[];
  readonly onToggle: (next: readonly string[]) => void;
}

/** Any number of a few. */
export function Checks<Value extends string>(props: ChecksProps<Value>): ReactNode {
  const { legend, chosen, options, onToggle } = props;
  const toggled = (option: Value): readonly string[] =>
    chosen.includes(option) ? chosen.filter((one) => one !== option) : [...chosen, option];
  return (
    <fieldset className="choices wide">
      <legend>{legend}</legend>
      {options.map(([option, text]) => (
        <label key={option}>
          <input
            type="checkbox"
            checked={chosen.includes(option)}
            onChange={() => onToggle(toggled(option))}
          />
          {text}
        </label>
      ))}
    </fieldset>
  );
}
