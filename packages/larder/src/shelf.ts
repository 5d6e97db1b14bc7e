/** A value that is made when it is first asked for. */
class Later<Value> {
  #make: (() => Value) | null;
  #value: Value | undefined;

  constructor(make: () => Value) {
    this.#make = make;
  }

  get(): Value {
    if (this.#make !== null) {
      this.#value = this.#make();
      this.#make = null;
    }
    return this.#value as Value;
  }
}

/**
 * A map whose values are made when they are first asked for: a recipe names twenty foods out of hundreds. Keys are known, and
 * stay in their order, from the start.
 */
export class Shelf<Value> implements ReadonlyMap<string, Value> {
  readonly #items = new Map<string, Later<Value>>();

  /** A shelf with the items of a map; those that another shelf has not made yet are left unmade. */
  static over<Value>(map: ReadonlyMap<string, Value>): Shelf<Value> {
    const shelf = new Shelf<Value>();
    if (map instanceof Shelf) for (const [key, item] of (map as Shelf<Value>).#items) shelf.#items.set(key, item);
    else for (const [key, value] of map) shelf.put(key, () => value);
    return shelf;
  }

  /** Puts an item in, or in the place of another. */
  put(key: string, make: () => Value): void {
    this.#items.set(key, new Later(make));
  }

  /** Takes an item away. */
  remove(key: string): void {
    this.#items.delete(key);
  }

  /** A shelf of what each item becomes, made when first asked for. */
  each<Other>(change: (value: Value) => Other): Shelf<Other> {
    const shelf = new Shelf<Other>();
    for (const [key, item] of this.#items) shelf.put(key, () => change(item.get()));
    return shelf;
  }

  get size(): number {
    return this.#items.size;
  }

  get(key: string): Value | undefined {
    return this.#items.get(key)?.get();
  }

  has(key: string): boolean {
    return this.#items.has(key);
  }

  keys(): MapIterator<string> {
    return this.#items.keys();
  }

  *values(): MapIterator<Value> {
    for (const item of this.#items.values()) yield item.get();
  }

  *entries(): MapIterator<[string, Value]> {
    for (const [key, item] of this.#items) yield [key, item.get()];
  }

  [Symbol.iterator](): MapIterator<[string, Value]> {
    return this.entries();
  }

  forEach(run: (value: Value, key: string, map: ReadonlyMap<string, Value>) => void): void {
    for (const [key, value] of this) run(value, key, this);
  }
}
