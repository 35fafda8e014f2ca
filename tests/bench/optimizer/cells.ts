/** How the tables of a bench say their numbers. What is not known is a dash, never a zero. */
const DASH = '-';

export function rows(head: readonly string[], body: readonly (readonly string[])[]): string[] {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...body.map(line)];
}

export function seconds(value: number | undefined): string {
  return value === undefined ? DASH : value.toFixed(1);
}

export function share(value: number | undefined, unit: number): string {
  return value === undefined || !Number.isFinite(unit) ? DASH : (value / unit).toFixed(4);
}

export function percent(value: number | undefined): string {
  return value === undefined ? DASH : `${(100 * value).toFixed(2)} %`;
}

export function ratio(value: number | undefined): string {
  return value === undefined ? DASH : value.toFixed(2);
}

export function whole(value: number | undefined): string {
  return value === undefined ? DASH : Math.round(value).toLocaleString('en-US');
}
