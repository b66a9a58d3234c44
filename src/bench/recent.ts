/** What was worked out lately, by what it was worked out from: so many are kept, the one asked for longest ago goes. */
export class Recent<Key, Value> {
  private readonly most: number;
  private readonly values = new Map<Key, Value>();

  constructor(most: number) {
    this.most = most;
  }

  get(key: Key): Value | undefined {
    const value = this.values.get(key);
    if (value !== undefined) {
      this.values.delete(key);
      this.values.set(key, value);
    }
    return value;
  }

  set(key: Key, value: Value): Value {
    this.values.set(key, value);
    const [oldest] = this.values.keys();
    if (this.values.size > this.most && oldest !== undefined) this.values.delete(oldest);
    return value;
  }

  /** What is kept, or what is made now. */
  of(key: Key, make: () => Value): Value {
    return this.get(key) ?? this.set(key, make());
  }
}
