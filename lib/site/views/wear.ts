import { type Guide, type Wearing, wearingOf } from '../../guide/index.ts';
import { phrase } from '../../words/index.ts';
import type { PictureIndex } from '../pictures.ts';
import type { SiteVoice } from '../voice.ts';
import { type Frame, frameOf } from './frame.ts';
import { pieceHref } from './pieces.ts';

export interface WearCell {
  /** Looks of the day the piece is in, as the table shows and as it is read out. */
  readonly mark: Wearing;
  readonly wash: boolean;
  readonly said: string;
}

export interface WearView {
  readonly frame: Frame;
  readonly kick: string;
  readonly heading: string;
  readonly lede: string;
  readonly days: readonly { readonly number: string; readonly weekday: string; readonly date: string }[];
  readonly rows: readonly {
    readonly name: string;
    readonly href: string;
    readonly cloth: string | undefined;
    readonly cells: readonly WearCell[];
    readonly total: string;
  }[];
  readonly words: Readonly<Record<'piece' | 'times' | 'day' | 'evening' | 'carried' | 'washed', string>>;
}

/** Which piece is worn, carried or washed on which day. */
export const wearView = (guide: Guide, pictures: PictureIndex, voice: SiteVoice): WearView => {
  const { word, say, formats } = voice;
  const words = {
    piece: word('column piece'),
    times: word('column times'),
    day: say(phrase('print', 'worn all day', {})),
    evening: say(phrase('print', 'worn evening', {})),
    carried: say(phrase('print', 'worn carried', {})),
    washed: word('washed'),
  };
  const cell = (id: string, day: Guide['plan']['days'][number], mark: Wearing): WearCell => {
    const wash = day.wash.some(({ piece }) => piece === id);
    const said = [mark === 'not' ? '' : words[mark], wash ? words.washed : ''];
    return { mark, wash, said: said.filter((text) => text !== '').join(', ') };
  };
  return {
    frame: frameOf({
      guide,
      voice,
      page: 'days',
      path: 'wear/',
      title: word('wear heading'),
      description: guide.brief.title,
    }),
    kick: guide.capsule.title,
    heading: word('wear heading'),
    lede: word('wear lede'),
    days: guide.plan.days.map(({ date }) => ({
      number: String(Number(date.slice(8))),
      weekday: formats.weekday(date).slice(0, 2),
      date: formats.date(date),
    })),
    rows: guide.pieces.map(({ id, name }) => {
      const wearing = wearingOf(guide.plan, guide.brief, id);
      return {
        name,
        href: pieceHref(id),
        cloth: pictures.cloth[id]?.address,
        cells: guide.plan.days.map((day) => cell(id, day, wearing.get(day.date) ?? 'not')),
        total: formats.count(guide.plan.wears[id] ?? 0),
      };
    }),
    words,
  };
};
