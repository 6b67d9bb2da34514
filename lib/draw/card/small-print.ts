import type { FontStyle, Fonts } from '../../type/index.ts';
import { plainText } from '../../type/index.ts';
import { shortNumber } from '../svg-path.ts';
import type { Tick } from '../tape.ts';
import type { CardInput } from './input.ts';
import type { LaidWord } from './letters.ts';
import type { CardColours } from './palette.ts';

/** The tape starts here, pixels from the top. */
export const TAPE_TOP = 40;
/** Where the grain line stands on a portrait card. */
export const GRAIN = { x: 1040, top: 519, bottom: 761 } as const;

/** Where words on the tape begin, beyond its longest tick. */
const BESIDE_TAPE = 24;
const LABEL_SIZE = 12;
const FIGURE_SIZE = 10;

/**
 * The words of the ornaments, each in a place of its own: the tape's unit and figures, and what the grain line says. They
 * need no layout, and the tape's scale is known only once the pieces lie. Throws `UncoveredTextError`.
 */
export const smallPrint = (
  input: CardInput,
  ticks: readonly Tick[],
  colours: CardColours,
  fonts: Fonts,
): readonly LaidWord[] => {
  const word = (raw: string, style: FontStyle, size: number): LaidWord => {
    const text = plainText(raw).trim();
    const faces = [...new Set(fonts.runs(text, style).map(({ face }) => face))];
    const width = (fonts.letters(text, faces).width * size) / 1000;
    return { text, x: 0, y: 0, width, size, spacing: 0, colour: colours.soft, faces, transform: '' };
  };
  const grain = word(input.grain, 'serif italic', LABEL_SIZE);
  const [x, y] = [GRAIN.x + 12, (GRAIN.top + GRAIN.bottom) / 2 - grain.width / 2];
  return [
    { ...word(input.tape.label, 'serif italic', LABEL_SIZE), x: BESIDE_TAPE, y: TAPE_TOP + 4 },
    ...ticks.flatMap(({ y: tick, mark }) =>
      mark === undefined
        ? []
        : [{ ...word(String(mark), 'text', FIGURE_SIZE), x: BESIDE_TAPE, y: Math.round(tick) + 4 }],
    ),
    ...(input.format === 'portrait' ? [{ ...grain, transform: `matrix(0 1 -1 0 ${x} ${shortNumber(y)})` }] : []),
  ].filter(({ text }) => text !== '');
};
