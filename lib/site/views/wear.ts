import type { Guide } from '../../guide/index.ts';
import type { PictureIndex } from '../pictures.ts';
import type { SiteVoice } from '../voice.ts';
import { type Frame, frameOf } from './frame.ts';
import { pieceHref } from './pieces.ts';

export interface WearCell {
  /** Looks of the day the piece is in, as the table shows and as it is read out. */
  readonly mark: 'worn' | 'carried' | 'none';
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
  readonly words: Readonly<Record<'piece' | 'times' | 'worn' | 'carried' | 'washed', string>>;
}

/** Which piece is worn, carried or washed on which day. */
export const wearView = (guide: Guide, pictures: PictureIndex, voice: SiteVoice): WearView => {
  const { word, formats } = voice;
  const words = {
    piece: word('column piece'),
    times: word('column times'),
    worn: word('worn'),
    carried: word('carried'),
    washed: word('washed'),
  };
  const cell = (id: string, day: Guide['plan']['days'][number]): WearCell => {
    const carried = day.occasions.some(({ layersCarried }) => layersCarried.includes(id));
    const worn = day.occasions.some(
      ({ look, layersCarried }) => look?.worn.some(({ piece }) => piece === id) === true && !layersCarried.includes(id),
    );
    const wash = day.wash.some(({ piece }) => piece === id);
    const said = [worn ? words.worn : carried ? words.carried : '', wash ? words.washed : ''];
    return {
      mark: worn ? 'worn' : carried ? 'carried' : 'none',
      wash,
      said: said.filter((text) => text !== '').join(', '),
    };
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
    rows: guide.pieces.map(({ id, name }) => ({
      name,
      href: pieceHref(id),
      cloth: pictures.cloth[id]?.address,
      cells: guide.plan.days.map((day) => cell(id, day)),
      total: formats.count(guide.plan.wears[id] ?? 0),
    })),
    words,
  };
};
