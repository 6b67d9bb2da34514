import type { HouseRuleSettings } from '../../model/house-rules.ts';
import type { Slot } from '../../vocabulary/places.ts';
import { type Phrase, phrase } from '../../words/phrase.ts';
import { formRefused } from '../grammar/asked.ts';
import { CORE_FORMS, FORMS } from '../grammar/forms.ts';
import { createGround, type Ground } from '../ground.ts';
import type { Restriction } from '../restriction.ts';
import { HOUSE_RULES, type RuleId } from '../rules/index.ts';
import type { WardrobeRules } from '../rules/rulebook.ts';
import { compileSpace } from '../space/compile.ts';
import { Descent } from '../space/descent.ts';

/** Why nothing is allowed: the rules (or the grammar, or what is asked) that leave no look. */
export interface Cause {
  readonly rules: readonly RuleId[];
  readonly message: Phrase;
}

const hasLook = (ground: Ground, restriction: Restriction): boolean =>
  CORE_FORMS.some((form) => {
    const space = compileSpace(ground, form, 'complete', restriction);
    if (space === undefined) return false;
    const descent = new Descent(space);
    return descent.open && descent.canFinish(0);
  });

const OFF = { severity: 'off' } as const;
const without = (settings: HouseRuleSettings, ids: readonly string[]): HouseRuleSettings => ({
  ...settings,
  ...Object.fromEntries(ids.map((id) => [id, OFF])),
});

/** Places that no piece takes, for the form that lacks fewest. */
const emptyPlaces = (ground: Ground, restriction: Restriction): readonly Slot[] =>
  CORE_FORMS.filter((form) => formRefused(form, restriction) === undefined)
    .map((form) => FORMS[form].required.filter((slot) => (ground.seatsBySlot.get(slot) ?? []).length === 0))
    .toSorted((a, b) => a.length - b.length)[0] ?? [];

/** A smallest set of rules that must go, by putting rules back one at a time as long as there is a look. */
const conflict = (wardrobe: WardrobeRules, restriction: Restriction): readonly RuleId[] => {
  const ids = HOUSE_RULES.map(({ id }) => id as RuleId);
  return ids.reduce<readonly RuleId[]>((off, id) => {
    const fewer = off.filter((other) => other !== id);
    const ground = createGround({ ...wardrobe, rules: without(wardrobe.rules, fewer) });
    return hasLook(ground, restriction) ? fewer : off;
  }, ids);
};

/** What is asked, one wish at a time: leaving it out is tried. */
const wishes = (restriction: Restriction): readonly { readonly asked: string; readonly rest: Restriction }[] =>
  Object.keys(restriction).map((wish) => ({
    asked: wish,
    rest: Object.fromEntries(Object.entries(restriction).filter(([key]) => key !== wish)),
  }));

/** See `WardrobeEngine.diagnose`. */
export const diagnose = (wardrobe: WardrobeRules, ground: Ground, restriction: Restriction): readonly Cause[] => {
  if (hasLook(ground, restriction)) return [];
  const lacking = emptyPlaces(ground, restriction);
  if (lacking.length > 0) {
    return lacking.map((place) => ({ rules: ['grammar'], message: phrase('outfit', 'no piece for', { place }) }));
  }
  if (!hasLook(ground, {})) {
    const single = HOUSE_RULES.filter(({ id }) =>
      hasLook(createGround({ ...wardrobe, rules: without(wardrobe.rules, [id]) }), {}),
    );
    if (single.length > 0) {
      return single.map(({ id }) => ({
        rules: [id as RuleId],
        message: phrase('outfit', 'rule forbids all', { rule: id }),
      }));
    }
    const bare = createGround({
      ...wardrobe,
      rules: without(
        wardrobe.rules,
        HOUSE_RULES.map(({ id }) => id),
      ),
    });
    if (!hasLook(bare, {})) return [{ rules: ['grammar'], message: phrase('outfit', 'pieces forbid all', {}) }];
    const rules = conflict(wardrobe, {});
    return [{ rules, message: phrase('outfit', 'rules forbid all', { rules }) }];
  }
  const single = wishes(restriction).filter(({ rest }) => hasLook(ground, rest));
  const asked = single.length > 0 ? single.map((wish) => wish.asked) : Object.keys(restriction);
  return asked.map((wish) => ({
    rules: ['occasion'],
    message: phrase('outfit', 'asked forbids all', { asked: wish }),
  }));
};
