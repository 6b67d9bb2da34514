import { foldedByPiece } from '../colour/index.ts';
import { buildGuides, findingsOfLetters } from '../guide/index.ts';
import type { Finding, Piece } from '../model/index.ts';
import { loadSolver } from '../solver/index.ts';
import { contentFolder, contentFor, tripNamed } from './content.ts';
import { CONTENT_OPTION, JSON_OPTION, type Verb } from './verb.ts';
import { findingLines, jsonText, voiceOf } from './voice.ts';

/** The most serious first. */
const WEIGHT = { error: 0, warning: 1, advice: 2 } as const;

/** Photos that cannot be cut out of their ground. */
const findingsOfPhotos = async (pieces: readonly Piece[], folder: string): Promise<readonly Finding[]> => {
  const photographed = pieces.filter(({ photo }) => photo !== undefined);
  if (photographed.length === 0) return [];
  // the publisher is read only for those who have photos
  const { motifsOf } = await import('../publish/index.ts');
  return (await motifsOf(photographed, folder)).findings;
};

export const checkVerb: Verb = {
  name: 'check',
  words: '[trip]',
  summary: 'Say what is wrong, doubtful or worth a thought in the content. Writes nothing.',
  options: { json: JSON_OPTION, content: CONTENT_OPTION },
  fewestWords: 0,
  mostWords: 1,
  async run([trip], options, world) {
    const content = await contentFor(options.content, world);
    if (content === undefined) return 1;
    if (trip !== undefined) tripNamed(content, trip);
    const computed = await buildGuides(content, await loadSolver(), trip === undefined ? {} : { trip });
    // read only now: the other verbs that compute start faster without the drawings
    const { drawingFindings } = await import('../draw/index.ts');
    const { loadFonts } = await import('../type/index.ts');
    const fonts = loadFonts();
    const guides = await Promise.all(
      computed.map(async (guide) => {
        const findings = [
          ...guide.findings,
          ...drawingFindings(guide.pieces),
          ...findingsOfLetters(guide, fonts),
          ...(await findingsOfPhotos(guide.pieces, contentFolder(options.content, world))),
        ];
        return { id: guide.id, findings: findings.toSorted((a, b) => WEIGHT[a.level] - WEIGHT[b.level]) };
      }),
    );
    const voice = voiceOf(content.studio);
    const failed = guides.some(({ findings }) => findings.some(({ level }) => level === 'error'));
    if (options.json === true) {
      world.out(
        jsonText(
          guides.map(({ id, findings }) => ({ guide: id, findings })),
          voice,
        ),
      );
      return failed ? 1 : 0;
    }
    for (const { id, findings } of guides) {
      world.out(`${id}: ${findings.length === 0 ? 'nothing to say' : ''}`.trimEnd());
      for (const line of findingLines(foldedByPiece(findings), voice)) world.out(line);
      world.out('');
    }
    return failed ? 1 : 0;
  },
};
