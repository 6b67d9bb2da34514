/// <reference lib="dom" />
/// <reference lib="dom.iterable" />

export interface FilterableLook {
  readonly pieces: readonly string[];
  readonly occasions: readonly string[];
  readonly low: number;
  readonly high: number;
  readonly dress: readonly string[];
}

export interface Wishes {
  readonly piece: string;
  readonly occasion: string;
  readonly warmth: string;
  readonly dress: string;
}

/** True when a look has all that is wished for; an empty wish asks nothing. */
export const suits = (look: FilterableLook, wishes: Wishes): boolean =>
  (wishes.piece === '' || look.pieces.includes(wishes.piece)) &&
  (wishes.occasion === '' || look.occasions.includes(wishes.occasion)) &&
  (wishes.warmth === '' || (look.low <= Number(wishes.warmth) && Number(wishes.warmth) <= look.high)) &&
  (wishes.dress === '' || look.dress.includes(wishes.dress));

const words = (text: string | undefined): readonly string[] => (text ?? '').split(' ').filter((word) => word !== '');

const lookOf = ({ dataset }: HTMLElement): FilterableLook => ({
  pieces: words(dataset.pieces),
  occasions: words(dataset.occasions),
  low: Number(dataset.low),
  high: Number(dataset.high),
  dress: words(dataset.dress),
});

const NAMES = ['piece', 'occasion', 'warmth', 'dress'] as const;

/** Shows the looks that suit the wishes; the wishes stand in the address, so that they can be sent on, and go along to another mood. */
export const filterLooks = (document: Document): void => {
  const bar = document.querySelector<HTMLElement>('[data-filters]');
  if (bar === null) return;
  const looks = [...document.querySelectorAll<HTMLElement>('[data-look]')].map((element) => ({
    element,
    look: lookOf(element),
  }));
  const select = (name: string): HTMLSelectElement | null => bar.querySelector<HTMLSelectElement>(`[name=${name}]`);
  const set = (from: URLSearchParams): void => {
    for (const name of NAMES) {
      const field = select(name);
      const value = from.get(name) ?? '';
      if (field !== null) field.value = [...field.options].some((option) => option.value === value) ? value : '';
    }
  };
  const show = (): void => {
    const [piece, occasion, warmth, dress] = NAMES.map((name) => select(name)?.value ?? '');
    const wishes = { piece: piece ?? '', occasion: occasion ?? '', warmth: warmth ?? '', dress: dress ?? '' };
    let shown = 0;
    for (const { element, look } of looks) {
      const fits = suits(look, wishes);
      element.hidden = !fits;
      if (fits) shown += 1;
    }
    const counter = document.querySelector<HTMLElement>('[data-shown]');
    if (counter !== null) counter.textContent = String(shown);
    const empty = document.querySelector<HTMLElement>('[data-none]');
    if (empty !== null) empty.hidden = shown > 0;
    for (const button of document.querySelectorAll<HTMLElement>('[data-show-all]'))
      button.hidden = Object.values(wishes).every((wish) => wish === '');
  };
  const remember = (): void => {
    const asked = new URLSearchParams(
      NAMES.flatMap((name): [string, string][] => {
        const value = select(name)?.value ?? '';
        return value === '' ? [] : [[name, value]];
      }),
    ).toString();
    history.replaceState(null, '', asked === '' ? location.pathname : `?${asked}`);
    for (const link of document.querySelectorAll<HTMLAnchorElement>('a[data-carry]')) link.search = asked;
  };
  bar.addEventListener('change', () => {
    show();
    remember();
  });
  for (const button of document.querySelectorAll('[data-show-all]')) {
    button.addEventListener('click', () => {
      set(new URLSearchParams());
      show();
      remember();
      select('piece')?.focus();
    });
  }
  set(new URLSearchParams(location.search));
  remember();
  bar.hidden = false;
  document.querySelector<HTMLElement>('[data-counted]')?.removeAttribute('hidden');
  show();
};
