import type { Guide } from '../../guide/index.ts';
import type { SiteVoice } from '../voice.ts';
import { type Frame, frameOf } from './frame.ts';

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
}

const LEVELS = ['error', 'warning', 'advice'] as const;

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
    levels: LEVELS.flatMap((level) => {
      const findings = guide.findings
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
