import { foldedByPiece } from '../../colour/index.ts';
import type { Guide } from '../../guide/index.ts';
import { phrase } from '../../words/index.ts';
import type { SiteVoice } from '../voice.ts';
import { type Frame, frameOf } from './frame.ts';
import { pieceHref } from './pieces.ts';

export interface FindingsView {
  readonly frame: Frame;
  readonly kick: string;
  readonly heading: string;
  readonly empty: string;
  readonly levels: readonly {
    readonly heading: string;
    readonly findings: readonly {
      readonly message: string;
      readonly reason: string;
      readonly mend: string;
      readonly orElse: readonly string[];
      readonly where: string;
    }[];
  }[];
  /** The list line by line with the pieces that fill it; empty without a list. */
  readonly lines: readonly {
    readonly what: string;
    readonly pieces: readonly { readonly name: string; readonly href: string }[];
    readonly note: string;
  }[];
  readonly words: Readonly<Record<'lines' | 'line' | 'pieces', string>>;
}

const LEVELS = ['error', 'warning', 'advice'] as const;

/** The list's lines; what is missing stands beside them, what is beyond them is among the findings. */
const linesOf = ({ listCheck, pieces }: Guide, { say }: SiteVoice): FindingsView['lines'] =>
  (listCheck?.lines ?? []).map(({ what, wanted, pieces: filling, under }) => ({
    what: say(phrase('compare', 'line asks', { what, wanted })),
    pieces: filling.map((id) => ({ name: pieces.find((piece) => piece.id === id)?.name ?? id, href: pieceHref(id) })),
    note: under === 0 ? '' : say(phrase('compare', 'line lacks', { under })),
  }));

/** What the check has to say, for the stylist's own edition. */
export const findingsView = (guide: Guide, voice: SiteVoice): FindingsView => {
  const { word, say } = voice;
  return {
    frame: frameOf({
      guide,
      voice,
      page: 'findings',
      path: 'findings/',
      title: word('findings heading'),
      description: guide.brief.title,
    }),
    kick: guide.capsule.title,
    heading: word('findings heading'),
    empty: guide.findings.length === 0 ? word('no findings') : '',
    lines: linesOf(guide, voice),
    words: {
      lines: say(phrase('compare', 'lines heading', {})),
      line: say(phrase('compare', 'column line', {})),
      pieces: word('pieces heading'),
    },
    levels: LEVELS.flatMap((level) => {
      const findings = foldedByPiece(guide.findings)
        .filter((finding) => finding.level === level)
        .map(({ message, reason, mend, orElse = [], file, line }) => ({
          message: say(message),
          reason: reason === undefined ? '' : say(reason),
          mend: mend === undefined ? '' : say(mend),
          orElse: orElse.map((other) => word('or else', { other: say(other) })),
          where: file === undefined ? '' : line === undefined ? file : `${file}:${line}`,
        }));
      return findings.length === 0 ? [] : [{ heading: word(`level ${level}`), findings }];
    }),
  };
};
