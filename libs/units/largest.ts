/** The items of the largest keys among those offered, the largest first; of equal keys the earlier offer. */
export class Largest<Item> {
  readonly items: Item[] = [];
  private readonly keys: number[] = [];

  /** @param most items kept, 1 or more */
  constructor(private readonly most: number) {}

  /** Key that an offer must exceed to be taken; -Infinity as long as there is room. */
  get bar(): number {
    return this.items.length < this.most ? -Infinity : (this.keys[this.most - 1] ?? -Infinity);
  }

  offer(item: Item, key: number): void {
    const { items, keys } = this;
    if (items.length >= this.most) {
      if (key <= this.bar) return;
      items.pop();
      keys.pop();
    }
    let place = items.length;
    for (; place > 0 && (keys[place - 1] ?? Infinity) < key; place--) {
      const [item, key] = [items[place - 1], keys[place - 1]];
      if (item !== undefined && key !== undefined) [items[place], keys[place]] = [item, key];
    }
    items[place] = item;
    keys[place] = key;
  }
}
