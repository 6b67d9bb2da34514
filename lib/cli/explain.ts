import { wardrobeOn, writeInstead } from '../content/index.ts';
import { engineFor, piecesOfCapsule, refusalFindings } from '../guide/index.ts';
import { dressSpanOf, dressSpanPhrases, type PieceVerdict, type WardrobeEngine } from '../outfit/index.ts';
import { DRESS_CODES } from '../vocabulary/index.ts';
import { capsuleNamed, contentFor } from './content.ts';
import { CONTENT_OPTION, JSON_OPTION, UsageError, type Verb } from './verb.ts';
import { jsonText, refusalData, type Voice, voiceOf } from './voice.ts';

/** A piece's partners by place, its looks, and what stands between it and the rest. */
const pieceLines = (
  { piece, goesWith, reasons }: PieceVerdict,
  engine: WardrobeEngine,
  voice: Voice,
  nameOf: (id: string) => string,
): readonly string[] => {
  const { formats } = voice;
  const looks = engine.count({ pieces: [piece] }).complete;
  const all = engine.count().complete;
  return [
    `${nameOf(piece)} is in ${formats.count(looks)} of ${formats.plural(all, { one: '# complete look', other: '# complete looks' })}. It goes with`,
    ...goesWith.map(
      ({ place, pieces, of }) =>
        `  ${place}: ${formats.count(pieces.length)} of ${formats.count(of)}${pieces.length === 0 ? '' : ` (${pieces.map(nameOf).join(', ')})`}`,
    ),
    reasons.length === 0 ? 'Nothing stands between it and the other pieces.' : 'What stands between it and the rest:',
    ...new Set(reasons.map(({ message, rule }) => `  ${voice.say(message)}${rule === 'grammar' ? '' : ` [${rule}]`}`)),
  ];
};

export const explainVerb: Verb = {
  name: 'explain',
  words: '<trip>/<capsule> <piece>…',
  summary:
    'Say whether pieces make a look, why or why not, and which dress codes they span. With one piece: why it pairs with so few.',
  options: { json: JSON_OPTION, content: CONTENT_OPTION },
  fewestWords: 2,
  mostWords: 40,
  async run([name = '', ...ids], options, world) {
    const content = await contentFor(options.content, world);
    if (content === undefined) return 1;
    const { trip, capsule } = capsuleNamed(content, name);
    const wardrobe = wardrobeOn(content.wardrobes, trip.brief, capsule);
    const known = wardrobe.map(({ id }) => id);
    for (const id of ids) {
      if (!known.includes(id)) throw new UsageError(`the wardrobe has no piece "${id}"; ${writeInstead(id, known)}`);
    }
    // A piece of the wardrobe that is not in the capsule may be asked about: it is judged as if it were.
    const asked = ids.filter((id) => !capsule.pieces.includes(id));
    const pieces = piecesOfCapsule({ ...capsule, pieces: [...capsule.pieces, ...asked] }, wardrobe);
    const engine = engineFor(pieces, capsule, content.houseRules);
    const voice = voiceOf(content.studio);
    const nameOf = (id: string): string => wardrobe.find((piece) => piece.id === id)?.name ?? id;
    const [only] = ids;
    if (ids.length === 1 && only !== undefined) {
      const told = engine.explainPiece(only);
      if (options.json === true) world.out(jsonText(told, voice));
      else for (const line of pieceLines(told, engine, voice, nameOf)) world.out(line);
      return 0;
    }
    const found = engine.explain(ids);
    const together = pieces.filter(({ id }) => ids.includes(id));
    const refused = refusalFindings(together, trip.brief, { ...content.houseRules, ...capsule.rules });
    const span = dressSpanOf(together);
    const spanSaid = dressSpanPhrases(span, nameOf);
    const verdict = { ...found, goes: found.goes && refused.length === 0 };
    if (options.json === true) {
      const dress = { ...span, low: DRESS_CODES[span.low], high: DRESS_CODES[span.high], says: spanSaid };
      world.out(jsonText({ ...verdict, dress, refused: refusalData(refused) }, voice));
      return 0;
    }
    const answer = !verdict.goes ? 'No' : verdict.complete ? 'Yes' : 'Yes, as far as it goes';
    world.out(`${answer}: ${ids.map(nameOf).join(', ')}.`);
    for (const { message, rule } of refused) world.out(`  no  ${voice.say(message)} [${rule}]`);
    for (const { severity, message, rule } of verdict.reasons) {
      world.out(`  ${severity === 'rules out' ? 'no' : 'but'}  ${voice.say(message)} [${rule}]`);
    }
    if (verdict.goes) for (const missing of verdict.missing) world.out(`  ${voice.say(missing)}`);
    const isSaid = verdict.reasons.some(({ rule }) => rule === 'dress-meets');
    if (!isSaid) for (const message of spanSaid) world.out(`  ${voice.say(message)}`);
    for (const id of asked) world.out(`  ${nameOf(id)} is in the wardrobe and not in this capsule.`);
    return 0;
  },
};
