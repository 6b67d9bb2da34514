/** A queue that gives what has the largest key first; of equal keys the latest. */
export interface Heap<Item> {
  readonly push: (key: number, item: Item) => void;
  readonly pop: () => { readonly key: number; readonly item: Item } | undefined;
  readonly size: () => number;
}

interface Entry<Item> {
  readonly key: number;
  readonly turn: number;
  readonly item: Item;
}

const before = (a: Entry<unknown>, b: Entry<unknown>): boolean => a.key > b.key || (a.key === b.key && a.turn > b.turn);

export const createHeap = <Item>(): Heap<Item> => {
  const entries: Entry<Item>[] = [];
  let turns = 0;
  const swap = (a: number, b: number): void => {
    const one = entries[a] as Entry<Item>;
    entries[a] = entries[b] as Entry<Item>;
    entries[b] = one;
  };
  const leads = (a: number, b: number): boolean => before(entries[a] as Entry<Item>, entries[b] as Entry<Item>);
  return {
    push: (key, item) => {
      turns += 1;
      entries.push({ key, turn: turns, item });
      for (let at = entries.length - 1; at > 0; ) {
        const parent = (at - 1) >> 1;
        if (!leads(at, parent)) return;
        swap(at, parent);
        at = parent;
      }
    },
    pop: () => {
      const top = entries[0];
      const last = entries.pop();
      if (top === undefined || last === undefined) return undefined;
      if (entries.length > 0) entries[0] = last;
      for (let at = 0; ; ) {
        let largest = at;
        for (const child of [at * 2 + 1, at * 2 + 2])
          if (child < entries.length && leads(child, largest)) largest = child;
        if (largest === at) return top;
        swap(at, largest);
        at = largest;
      }
    },
    size: () => entries.length,
  };
};
