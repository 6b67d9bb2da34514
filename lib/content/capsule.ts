import * as v from 'valibot';
import type { HouseNeutrals } from '../colour/index.ts';
import type { Brief, Capsule, HouseRuleSettings, PackingListPlan, Studio } from '../model/index.ts';
import type { FrontMatter } from './front-matter.ts';
import { toProblems } from './problems.ts';
import { occasionsNamed } from './references.ts';
import type { Read } from './result.ts';
import { capsuleSchema, houseRulesSchema, listSchema, studioSchema } from './schema/capsule.ts';
import { fieldsOf } from './schema/fields.ts';

/** An occasion as the brief writes it, when the capsule writes it in other letters. */
const occasionMeant = (brief: Pick<Brief, 'occasions'>, name: string): string => {
  const [id] = occasionsNamed(brief, name);
  const meant = brief.occasions.find((occasion) => occasion.id === id);
  return meant === undefined || meant.id === name ? name : meant.what;
};

/** Reads a capsule; its traveller, wardrobe and list default to the only ones there are. */
export const readCapsule = (
  id: string,
  brief: Pick<Brief, 'id' | 'travellers' | 'occasions'>,
  lists: readonly string[],
  matter: FrontMatter,
): Read<Capsule> => {
  const parsed = v.safeParse(capsuleSchema, matter.data);
  if (!parsed.success) return { problems: toProblems(matter, parsed.issues, fieldsOf(capsuleSchema)) };
  const written = parsed.output;
  const traveller = written.traveller ?? brief.travellers[0]?.name ?? '';
  const fixedLook = ({
    pieces,
    title,
    note,
  }: {
    pieces: string[];
    title?: string | undefined;
    note?: string | undefined;
  }) => ({
    pieces,
    ...(title === undefined ? {} : { title }),
    ...(note === undefined ? {} : { note }),
  });
  return {
    value: {
      id,
      file: matter.file,
      trip: brief.id,
      title: written.title,
      traveller,
      wardrobe: written.wardrobe ?? brief.travellers.find(({ name }) => name === traveller)?.wardrobe ?? '',
      list: written.list ?? lists[0] ?? '',
      mood: { palette: written.mood.palette ?? [], words: written.mood.words ?? [] },
      pieces: written.pieces,
      piecesLine: matter.lineOf(['pieces']),
      ...(written.choose === undefined
        ? {}
        : { choose: { keep: written.choose.keep, leaveOut: written.choose['leave out'] } }),
      never: written.never,
      always: written.always,
      favourites: written.favourites.map(fixedLook),
      fixed: written.fixed.map((look, index) => ({
        ...fixedLook(look),
        occasion: occasionMeant(brief, look.occasion),
        line: matter.lineOf(['fixed', index]),
      })),
      rules: written.rules as HouseRuleSettings,
      rationale: matter.body,
    },
    problems: [],
  };
};

/** Reads a list: lines of "n of these kinds". */
export const readList = (id: string, matter: FrontMatter): Read<PackingListPlan> => {
  const parsed = v.safeParse(listSchema, matter.data);
  if (!parsed.success) return { problems: toProblems(matter, parsed.issues, fieldsOf(listSchema)) };
  const { title, lines } = parsed.output;
  return { value: { id, file: matter.file, title, lines, note: matter.body }, problems: [] };
};

/** What a studio has laid down for every trip. */
export interface House {
  readonly rules: HouseRuleSettings;
  readonly neutrals: HouseNeutrals;
}

/** Reads the studio's house rules. */
export const readHouseRules = (matter: FrontMatter): Read<House> => {
  const parsed = v.safeParse(houseRulesSchema, matter.data);
  if (!parsed.success) return { problems: toProblems(matter, parsed.issues, fieldsOf(houseRulesSchema)) };
  const { rules, neutral, 'not neutral': notNeutral } = parsed.output;
  return { value: { rules: rules as HouseRuleSettings, neutrals: { neutral, notNeutral } }, problems: [] };
};

/** Reads the stylist's own settings. */
export const readStudio = (matter: FrontMatter): Read<Studio> => {
  const parsed = v.safeParse(studioSchema, matter.data);
  if (!parsed.success) return { problems: toProblems(matter, parsed.issues, fieldsOf(studioSchema)) };
  const written = parsed.output;
  const { paper, ink } = written['page colours'];
  return {
    value: {
      name: written.name,
      line: written.line,
      language: written.language,
      temperature: written.units.temperature ?? 'C',
      length: written.units.length ?? 'cm',
      weight: written.units.weight ?? 'kg',
      paper: written.paper,
      ...(paper === undefined ? {} : { paperColour: paper.hex }),
      ...(ink === undefined ? {} : { inkColour: ink.hex }),
      looksShown: written['looks shown'],
      ...(written.address === undefined ? {} : { address: written.address }),
      note: matter.body,
    },
    problems: [],
  };
};
