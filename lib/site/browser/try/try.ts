/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import { createJudge } from '../../../outfit/index.ts';
import { createFormats } from '../../../words/formats.ts';
import { type Language, type Phrase, say } from '../../../words/phrase.ts';
import type { TryData } from '../../try-data.ts';
import { drawBoard } from './board.ts';
import { type Told, told, wouldGo } from './told.ts';

const fill = (list: HTMLElement | null, sentences: readonly string[]): void => {
  const block = list?.closest<HTMLElement>('[data-try-block]');
  if (block != null) block.hidden = sentences.length === 0;
  list?.replaceChildren(
    ...sentences.map((sentence) => {
      const line = document.createElement('li');
      line.textContent = sentence;
      return line;
    }),
  );
};

/** Lets a reader put pieces together: the verdict with its reasons at once, the flat lay after it, both by the address. */
export const tryOn = (document: Document, sentences: Partial<Language>): void => {
  const bench = document.querySelector<HTMLElement>('[data-try]');
  if (bench === null) return;
  const data = JSON.parse(bench.dataset.try ?? '{}') as TryData;
  const judge = createJudge(data.rules);
  const formats = createFormats(data.studio);
  const saying = (phrase: Phrase): string => say(sentences, formats, phrase);
  const part = <E extends Element = HTMLElement>(name: string): E | null =>
    document.querySelector<E>(`[data-try-${name}]`);
  const boxes = [...bench.querySelectorAll<HTMLInputElement>('input[name=piece]')];
  const nameOf = new Map(data.rules.pieces.map(({ id, name }) => [id, name]));
  const svg = part<SVGSVGElement>('board');
  const dark = matchMedia('(prefers-color-scheme: dark)');
  /** Ids of the address that this book does not have: an old link. */
  let strangers: readonly string[] = [];
  let drawing = 0;

  const chosen = (): readonly string[] => boxes.filter(({ checked }) => checked).map(({ value }) => value);

  const draw = (): void => {
    const ids = chosen();
    const seats = new Map(judge.explain(ids).look?.worn.map(({ piece, slot }) => [piece, slot]));
    const lying = ids.map((piece) => ({ piece, slot: seats.get(piece) ?? data.pieces[piece]?.slot ?? 'top' }));
    if (svg === null) return;
    const { board, empty, crowded } = data.words;
    const drawn = drawBoard(svg, lying, data, dark.matches);
    const names = ids.map((id) => nameOf.get(id) ?? id);
    svg.setAttribute('aria-label', `${board}: ${ids.length === 0 ? empty : formats.list(names)}`);
    const note = part('crowded');
    if (note !== null) note.textContent = drawn ? '' : crowded;
  };

  const tell = ({ state, verdict, reasons, advice, missing, look }: Told): void => {
    const verdictLine = part('verdict');
    if (verdictLine !== null) verdictLine.textContent = verdict;
    fill(part('reasons'), reasons);
    fill(part('advice'), advice);
    fill(part('missing'), missing);
    const link = part<HTMLAnchorElement>('look');
    if (link !== null) {
      link.hidden = look === undefined;
      link.textContent = look?.text ?? '';
      link.href = look?.href ?? '';
    }
    const block = part('state');
    if (block === null) return;
    block.setAttribute('data-try-state', state);
    // more than fits beside the board scrolls, and what scrolls has to be reached by keyboard
    if (block.scrollHeight > block.clientHeight) block.tabIndex = 0;
    else block.removeAttribute('tabindex');
  };

  const mark = (ids: readonly string[], goes: boolean): void => {
    for (const { value, checked, labels } of boxes) {
      const refused = data.pieces[value]?.refused !== undefined;
      const against = goes && ids.length > 0 && !checked && (refused || !wouldGo(judge, ids, value));
      const label = labels?.[0];
      label?.classList.toggle('against', against);
      const words = label?.querySelector<HTMLElement>('[data-try-against]');
      if (words != null) words.hidden = !against;
    }
  };

  const show = (): void => {
    const ids = chosen();
    const verdict = judge.explain(ids);
    const unknown = strangers.flatMap((id) => judge.explain([id]).reasons.map(({ message }) => saying(message)));
    const said = told(ids, verdict, data, saying);
    tell({ ...said, advice: [...unknown, ...said.advice] });
    // the verdict is seen first; what takes longer comes after it
    cancelAnimationFrame(drawing);
    drawing = requestAnimationFrame(() =>
      setTimeout(() => {
        mark(ids, said.state !== 'not');
        draw();
      }),
    );
  };

  const remember = (): void => {
    strangers = [];
    const asked = new URLSearchParams(chosen().map((id): [string, string] => ['piece', id])).toString();
    history.replaceState(null, '', asked === '' ? location.pathname : `?${asked}`);
  };

  const readAddress = (): void => {
    const asked = new URLSearchParams(location.search).getAll('piece');
    for (const box of boxes) box.checked = asked.includes(box.value);
    strangers = asked.filter((id) => !nameOf.has(id));
  };

  const changed = (): void => {
    remember();
    show();
  };
  bench.addEventListener('change', changed);
  part('clear')?.addEventListener('click', () => {
    for (const box of boxes) box.checked = false;
    changed();
    boxes[0]?.focus();
  });
  dark.addEventListener('change', draw);
  const send = part<HTMLButtonElement>('send');
  send?.addEventListener('click', async () => {
    const done = part('sent');
    try {
      if (navigator.share !== undefined) await navigator.share({ title: data.words.heading, url: location.href });
      else {
        await navigator.clipboard.writeText(location.href);
        if (done !== null) done.textContent = data.words.copied;
      }
    } catch {
      // the reader closed the sheet, or the browser keeps the clipboard to itself: the address is still in its bar
    }
  });
  if (send !== null) send.hidden = !('share' in navigator || 'clipboard' in navigator);

  readAddress();
  part('needs')?.remove();
  bench.hidden = false;
  show();
};
