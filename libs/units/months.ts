/** The ISO date `months` months later; days past the end of a month fall on its last day. */
export function addMonths(date: string, months: number): string {
  const [year = NaN, month = NaN, day = NaN] = date.split('-').map(Number);
  const total = year * 12 + (month - 1) + months;
  const toYear = Math.floor(total / 12);
  const toMonth = total - toYear * 12;
  const lastDay = new Date(Date.UTC(toYear, toMonth + 1, 0)).getUTCDate();
  const pad = (n: number) => String(n).padStart(2, '0');
  return `${toYear}-${pad(toMonth + 1)}-${pad(Math.min(day, lastDay))}`;
}
