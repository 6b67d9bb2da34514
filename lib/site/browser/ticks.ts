/// <reference lib="dom" />
/// <reference lib="dom.iterable" />

const PREFIX = 'wayfold ticks ';

interface Store {
  read(): ReadonlySet<string>;
  /** False when the browser does not keep it. */
  write(ids: readonly string[]): boolean;
}

const storeAt = (key: string, storage: () => Storage): Store => ({
  read: () => {
    try {
      const kept: unknown = JSON.parse(storage().getItem(PREFIX + key) ?? '[]');
      return new Set(Array.isArray(kept) ? kept.filter((id) => typeof id === 'string') : []);
    } catch {
      return new Set();
    }
  },
  write: (ids) => {
    try {
      storage().setItem(PREFIX + key, JSON.stringify(ids));
      return true;
    } catch {
      return false;
    }
  },
});

const save = (document: Document, name: string, lines: readonly string[]): void => {
  const address = URL.createObjectURL(new Blob([`${lines.join('\n')}\n`], { type: 'text/plain;charset=utf-8' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  URL.revokeObjectURL(address);
};

/** Keeps the ticks of a packing list in the browser, counts them, takes them back, saves them as a text file. */
export const keepTicks = (document: Document, storage: () => Storage): void => {
  const list = document.querySelector<HTMLElement>('[data-ticks]');
  if (list === null) return;
  const store = storeAt(list.dataset.ticks ?? '', storage);
  const boxes = [...list.querySelectorAll<HTMLInputElement>('input[data-tick]')];
  const part = (name: string): HTMLElement | null => document.querySelector<HTMLElement>(`[data-ticks-${name}]`);
  const count = (): void => {
    const counter = part('count');
    if (counter !== null) counter.textContent = String(boxes.filter(({ checked }) => checked).length);
  };
  const keep = (): void => {
    const kept = store.write(boxes.flatMap(({ checked, dataset }) => (checked ? (dataset.tick ?? []) : [])));
    const warning = part('refused');
    if (warning !== null) warning.hidden = kept;
    count();
  };
  const before = store.read();
  for (const box of boxes) {
    box.checked = before.has(box.dataset.tick ?? '');
    box.addEventListener('change', keep);
  }
  part('tools')?.removeAttribute('hidden');
  const reset = part('reset');
  reset?.addEventListener('click', () => {
    if (!confirm(reset.dataset.ticksReset)) return;
    for (const box of boxes) box.checked = false;
    keep();
  });
  part('export')?.addEventListener('click', () =>
    save(
      document,
      `${(list.dataset.ticks ?? '').replaceAll('/', '-')}.txt`,
      boxes.map((box) => `[${box.checked ? 'x' : ' '}] ${box.labels?.[0]?.querySelector('.nm')?.textContent ?? ''}`),
    ),
  );
  keep();
};
