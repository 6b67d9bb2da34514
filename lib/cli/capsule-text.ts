import type { Proposal } from '../capsule/index.ts';
import type { Capsule, HouseRuleSettings } from '../model/index.ts';

/** The stylist's sets of pieces, as far as the proposal has them whole. */
const setsText = (
  field: 'never' | 'always',
  sets: readonly (readonly string[])[],
  { pieces }: Proposal,
): readonly string[] => {
  const whole = sets.filter((set) => set.every((id) => pieces.some((piece) => piece.id === id)));
  return whole.length === 0 ? [] : [`${field}:`, ...whole.map((set) => `  - [${set.join(', ')}]`)];
};

/** A setting as a stylist writes it: `off`, `lowers the score`, a number, or both in braces. */
const settingText = ({ severity, threshold }: HouseRuleSettings[string]): string => {
  if (threshold === undefined) return severity ?? 'off';
  return severity === undefined ? String(threshold) : `{severity: ${severity}, threshold: ${threshold}}`;
};

const rulesText = (rules: HouseRuleSettings): readonly string[] => {
  const set = Object.entries(rules).map(([rule, setting]) => `  ${rule}: ${settingText(setting)}`);
  return set.length === 0 ? [] : ['rules:', ...set];
};

/** A capsule's file as the stylist would write it. JSON strings are YAML strings, so names need no care. */
export const capsuleText = (proposal: Proposal, like: Capsule, title: string): string =>
  [
    '---',
    `title: ${JSON.stringify(title)}`,
    `traveller: ${JSON.stringify(like.traveller)}`,
    `wardrobe: ${like.wardrobe}`,
    ...(like.list === '' ? [] : [`list: ${like.list}`]),
    'mood:',
    `  palette: [${like.mood.palette.map(({ name }) => name).join(', ')}]`,
    `  words: [${like.mood.words.map((word) => JSON.stringify(word)).join(', ')}]`,
    'pieces:',
    ...proposal.pieces.map(({ id }) => `  - ${id}`),
    ...setsText('never', like.never, proposal),
    ...setsText('always', like.always, proposal),
    ...rulesText(like.rules),
    '---',
    '',
  ].join('\n');
