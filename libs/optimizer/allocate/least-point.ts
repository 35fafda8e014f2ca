/** The least sum of numbers that keep some inequalities; made for few numbers and few of these. */
export class LeastPoint {
  /** Each: a constant, then a weight for each number or slack that is 0 now. */
  private readonly rows: Float64Array[] = [];
  /** Which number (0 .. count - 1) or slack (count and up) stands in each row, and in each column. */
  private readonly inRow: number[] = [];
  private readonly inColumn: number[];
  private readonly prices: Float64Array;
  private slacks = 0;

  constructor(private readonly count: number) {
    this.inColumn = Array.from({ length: count }, (_, i) => i);
    this.prices = new Float64Array(count).fill(1);
  }

  /** Adds: sum of `weights` x numbers >= `atLeast`. */
  add(weights: readonly number[], atLeast: number): void {
    const row = new Float64Array(this.count + 1);
    row[0] = -atLeast;
    weights.forEach((weight, number) => {
      if (weight === 0) return;
      const at = this.inRow.indexOf(number);
      if (at >= 0) addTo(row, this.rows[at], weight);
      else {
        const column = 1 + this.inColumn.indexOf(number);
        row[column] = (row[column] ?? 0) + weight;
      }
    });
    this.rows.push(row);
    this.inRow.push(this.count + this.slacks++);
  }

  /** The numbers, each 0 or more; `undefined` where none keep all that was added. */
  find(): number[] | undefined {
    for (let step = 0; step < MOST_STEPS; step++) {
      const row = this.worstRow();
      if (row < 0) return this.numbers();
      const column = this.cheapestColumn(row);
      if (column < 0) return undefined;
      this.exchange(row, column);
    }
    return undefined;
  }

  private numbers(): number[] {
    return Array.from({ length: this.count }, (_, number) => {
      const at = this.inRow.indexOf(number);
      return at < 0 ? 0 : (this.rows[at]?.[0] ?? 0);
    });
  }

  private worstRow(): number {
    let worst = -1;
    this.rows.forEach((row, r) => {
      const value = row[0] ?? 0;
      if (value < -NEAR && (worst < 0 || value < (this.rows[worst]?.[0] ?? 0))) worst = r;
    });
    return worst;
  }

  /** Dual simplex: of what would mend the row, the column with the lowest price for it. */
  private cheapestColumn(row: number): number {
    let cheapest = -1;
    let least = Infinity;
    for (let column = 0; column < this.count; column++) {
      const weight = this.rows[row]?.[column + 1] ?? 0;
      if (weight <= NEAR) continue;
      const price = (this.prices[column] ?? 0) / weight;
      if (price >= least - NEAR) continue;
      cheapest = column;
      least = price;
    }
    return cheapest;
  }

  private exchange(r: number, column: number): void {
    const row = this.rows[r];
    if (!row) return;
    const at = column + 1;
    const weight = row[at] ?? 1;
    const entering = row.map((value) => -value / weight);
    entering[at] = 1 / weight;
    const put = (into: Float64Array, factor: number) => {
      into[at] = 0;
      addTo(into, entering, factor);
    };
    this.rows.forEach((other, i) => {
      if (i !== r && other[at]) put(other, other[at]);
    });
    const price = this.prices[column] ?? 0;
    const prices = new Float64Array([0, ...this.prices]);
    put(prices, price);
    this.prices.set(prices.subarray(1));
    this.rows[r] = entering;
    const leaving = this.inRow[r] ?? 0;
    this.inRow[r] = this.inColumn[column] ?? 0;
    this.inColumn[column] = leaving;
  }
}

/** A millionth of a cent, where numbers are cents. */
const NEAR = 1e-6;
const MOST_STEPS = 10_000;

function addTo(row: Float64Array, other: Float64Array | undefined, factor: number): void {
  other?.forEach((value, i) => {
    row[i] = (row[i] ?? 0) + factor * value;
  });
}
