const whole = new Intl.NumberFormat('en-US', { maximumFractionDigits: 0 });

/** `$68,000`: to $100, and to $1,000 from $10,000 on, as a class 5 estimate can be trusted. */
export function dollars(amount: number): string {
  const step = Math.abs(amount) < 10_000 ? 100 : 1000;
  const rounded = Math.round(amount / step) * step;
  return `${rounded < 0 ? '-' : ''}$${whole.format(Math.abs(rounded))}`;
}

/** `158 h`. */
export function hours(amount: number): string {
  return `${whole.format(amount)} h`;
}
