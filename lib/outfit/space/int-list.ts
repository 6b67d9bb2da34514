/** A growing list of 32-bit whole numbers. */
export class IntList {
  length = 0;
  private items = new Int32Array(512);

  push(value: number): void {
    if (this.length === this.items.length) this.enlarge();
    this.items[this.length] = value;
    this.length += 1;
  }

  at(index: number): number {
    return this.items[index] as number;
  }

  private enlarge(): void {
    const larger = new Int32Array(this.items.length * 2);
    larger.set(this.items);
    this.items = larger;
  }
}
