import type { Detail, Drawing, DrawnPiece } from '../draw/drawing.ts';
import type { Guide } from '../guide/record.ts';
import type { Finding, Piece, Sundry } from '../model/index.ts';
import type { Fonts } from '../type/index.ts';
import type { Tuck } from '../vocabulary/index.ts';
import { createFormats, type English, type Formats, type Language, type Phrase, phrase, say } from '../words/index.ts';
import { type Inks, inksFor } from './ink.ts';
import type { Orientation, PaperName } from './paper.ts';
import type { DrawnForm } from './pdf/drawings.ts';
import { createPress, type Press } from './pdf/press.ts';
import { findTrouble } from './trouble.ts';
import { type Types, typesFor } from './types.ts';

/** What a sheet is made of besides the guide; all of it handed in. */
export interface PrintSources {
  readonly fonts: Fonts;
  readonly language: Partial<Language>;
  readonly drawPiece: (piece: DrawnPiece, detail: Detail) => Drawing;
  /** Icon of something that is not worn; a line without one stays without a picture. */
  readonly drawSundry?: (sundry: Sundry) => Drawing;
  /** Photos of pieces by id, JPEG or PNG; shown in the booklet instead of the drawing. */
  readonly photos?: ReadonlyMap<string, Uint8Array>;
}

export interface PaperChoice {
  /** The studio's paper when left out. */
  readonly paper?: PaperName;
  readonly orientation?: Orientation;
}

/** A printed document, and what there is to say of it. */
export interface Printed {
  readonly bytes: Uint8Array;
  readonly pages: number;
  readonly findings: readonly Finding[];
}

type PrintWords = English['print'];
export type SayPrint = <K extends keyof PrintWords & string>(
  key: K,
  ...values: Parameters<PrintWords[K]> extends [] ? [] : [values: Parameters<PrintWords[K]>[0]]
) => string;

/** One document at work: the guide, the press and the studio's way of writing. */
export interface Job {
  readonly guide: Guide;
  readonly press: Press;
  readonly formats: Formats;
  readonly inks: Inks;
  readonly types: Types;
  readonly findings: Finding[];
  say: SayPrint;
  sayPhrase(said: Phrase): string;
  piece(id: string): Piece;
  /** Names of pieces, in the order given. */
  names(ids: readonly string[]): readonly string[];
  drawing(piece: Piece, detail: Detail, tuck?: Tuck): Drawing;
  art(piece: Piece, detail: Detail, scale: number, tuck?: Tuck): DrawnForm;
  sundryArt(sundry: Sundry, scale: number): DrawnForm | undefined;
}

export type DocumentName = 'packing title' | 'day plan title' | 'wear table title' | 'booklet title' | 'cards title';

export const startJob = async (guide: Guide, sources: PrintSources, name: DocumentName): Promise<Job> => {
  const { studio, brief, capsule } = guide;
  const formats = createFormats(studio);
  const sayPhrase = (said: Phrase): string => say(sources.language, formats, said);
  const sayPrint: SayPrint = (key, ...[values]) => sayPhrase(phrase('print', key, (values ?? {}) as never));
  const inks = inksFor(guide.accent.light);
  const what = sayPrint(name, { traveller: capsule.traveller });
  const press = await createPress(sources.fonts, {
    title: sayPrint('document title', { what, trip: brief.title }),
    author: studio.name,
    subject: capsule.title,
    language: studio.language,
    dated: brief.from,
  });
  const pieces = new Map(guide.pieces.map((piece) => [piece.id, piece]));
  const forms = new Map<string, DrawnForm>();
  const keep = (key: string, scale: number, make: () => Drawing): DrawnForm => {
    const made = forms.get(key) ?? press.drawings.form(make(), scale);
    forms.set(key, made);
    return made;
  };
  const drawings = new Map<string, Drawing>();
  const drawing = (of: Piece, detail: Detail, tuck?: Tuck): Drawing => {
    const key = `${of.id} ${detail} ${tuck ?? ''}`;
    const made = drawings.get(key) ?? sources.drawPiece({ ...of, tuck }, detail);
    drawings.set(key, made);
    return made;
  };
  const piece = (id: string): Piece => {
    const found = pieces.get(id);
    if (found === undefined) throw new Error(`the guide "${guide.id}" names the piece "${id}" and does not hold it`);
    return found;
  };
  return {
    guide,
    press,
    formats,
    inks,
    types: typesFor(inks),
    findings: [],
    say: sayPrint,
    sayPhrase,
    piece,
    names: (ids) => ids.map((id) => piece(id).name),
    drawing,
    art: (of, detail, scale, tuck) => keep(`${of.id} ${detail} ${tuck ?? ''}`, scale, () => drawing(of, detail, tuck)),
    sundryArt: (sundry, scale) => {
      const { drawSundry } = sources;
      if (drawSundry === undefined) return undefined;
      return keep(`sundry ${sundry.group} ${sundry.name}`, scale, () => drawSundry(sundry));
    },
  };
};

/** Writes the document. */
export const finishJob = async (job: Job): Promise<Printed> => ({
  ...(await job.press.finish()),
  findings: [...findTrouble(job.press.setter.troubles()), ...job.findings],
});
