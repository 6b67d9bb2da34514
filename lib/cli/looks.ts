import { wardrobeOn } from '../content/index.ts';
import { engineFor, piecesNotWorn, piecesOfCapsule, refusalFindings } from '../guide/index.ts';
import type { Look, LookCounts, Piece } from '../model/index.ts';
import type { WardrobeEngine } from '../outfit/index.ts';
import { capsuleNamed, contentFor } from './content.ts';
import { CONTENT_OPTION, JSON_OPTION, UsageError, type Verb, wholeNumber } from './verb.ts';
import { jsonText, refusalData, type Voice, voiceOf } from './voice.ts';

const LEVELS = ['core', 'layered', 'complete'] as const;
type Level = (typeof LEVELS)[number];

/** The three counts, each with what it counts. */
export const countLines = (counts: LookCounts, count: (value: bigint) => string): readonly string[] => {
  const rows: readonly (readonly [bigint, string])[] = [
    [counts.core, 'core looks: top and bottom, one-piece, or swimwear'],
    [counts.layered, 'layered looks: cores with every choice of mid and outer layer; what stylists usually count'],
    [counts.complete, 'complete looks: with legwear, shoes and accessories'],
  ];
  const width = Math.max(...rows.map(([value]) => count(value).length));
  return rows.map(([value, what]) => `${count(value).padStart(width)}  ${what}`);
};

const lookText = (look: Look, byId: ReadonlyMap<string, Piece>): string =>
  look.worn.map(({ piece }) => byId.get(piece)?.name ?? piece).join(', ');

/** Why there is no look; nothing where there are some. */
const causeLines = (engine: WardrobeEngine, { complete }: LookCounts, voice: Voice): readonly string[] => {
  const causes = engine.diagnose();
  if (causes.length > 0) return causes.map(({ message }) => voice.say(message));
  return complete === 0n ? ['Every look of these pieces has a piece in it that the client does not wear.'] : [];
};

export const looksVerb: Verb = {
  name: 'looks',
  words: '<trip>/<capsule>',
  summary: 'List the looks of a capsule in their fixed order, or count them.',
  options: {
    count: { type: 'boolean', help: 'print the three counts only' },
    level: { type: 'string', value: 'level', help: 'core, layered or complete (layered)' },
    first: { type: 'string', value: 'n', help: 'at most this many looks (50)' },
    after: { type: 'string', value: 'look', help: 'go on after this look' },
    json: JSON_OPTION,
    content: CONTENT_OPTION,
  },
  fewestWords: 1,
  mostWords: 1,
  async run([name = ''], options, world) {
    const level = String(options.level ?? 'layered') as Level;
    if (!LEVELS.includes(level)) throw new UsageError(`there is no level "${level}"; write ${LEVELS.join(', ')}`);
    const first = wholeNumber(options.first, 'first', 50);
    const content = await contentFor(options.content, world);
    if (content === undefined) return 1;
    const { trip, capsule } = capsuleNamed(content, name);
    const pieces = piecesOfCapsule(capsule, wardrobeOn(content.wardrobes, trip.brief, capsule));
    const byId = new Map(pieces.map((piece) => [piece.id, piece]));
    const engine = engineFor(pieces, capsule, content.houseRules);
    const refused = refusalFindings(pieces, trip.brief, { ...content.houseRules, ...capsule.rules });
    const restriction = { without: piecesNotWorn(pieces, trip.brief) };
    const counts = engine.count(restriction);
    const voice = voiceOf(content.studio);
    const { formats } = voice;
    const looks: Look[] = [];
    let more = false;
    if (options.count !== true) {
      const after = options.after === undefined ? {} : { after: String(options.after) };
      for (const look of engine.enumerate({ level, restriction, ...after })) {
        if (looks.length === first) {
          more = true;
          break;
        }
        looks.push(look);
      }
    }
    if (options.json === true) {
      const listed = options.count === true ? {} : { level, looks };
      world.out(jsonText({ capsule: name, counts, ...listed, refused: refusalData(refused) }, voice));
      return 0;
    }
    for (const look of looks) world.out(lookText(look, byId));
    if (looks.length > 0) world.out('');
    if (more) world.out(`${looks.length} ${level} looks shown; go on with --after ${looks.at(-1)?.id ?? ''}\n`);
    for (const line of countLines(counts, formats.count)) world.out(line);
    for (const line of causeLines(engine, counts, voice)) world.out(line);
    if (refused.length > 0) world.out('\nThe looks keep to what the client wears:');
    for (const { message, rule } of refused) world.out(`  ${voice.say(message)} [${rule}]`);
    return 0;
  },
};
