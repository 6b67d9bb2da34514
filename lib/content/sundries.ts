import * as v from 'valibot';
import type { StockLine } from '../model/index.ts';
import type { FrontMatter } from './front-matter.ts';
import { toProblems } from './problems.ts';
import type { Read } from './result.ts';
import { fieldsOf } from './schema/fields.ts';
import { sundriesSchema, type WrittenSundry } from './schema/sundries.ts';

/** Small things pack to about so much a gram, when their litres are not written. Own estimate. */
const LITRES_A_GRAM = 0.0025;

const lineOf = (written: WrittenSundry, matter: FrontMatter, index: number): StockLine => ({
  name: written.name,
  group: written.group,
  count: written.count,
  per: written.per,
  spare: written.spare,
  ...(written.most === undefined ? {} : { most: written.most }),
  when: written.when,
  travellers: written.travellers,
  gramsEach: written.grams,
  litresEach: written.litres ?? written.grams * LITRES_A_GRAM,
  ...(written.ml === undefined ? {} : { millilitres: written.ml }),
  ...(written.wh === undefined ? {} : { wattHours: written.wh }),
  ...(written['spare battery'] ? { spareBattery: true } : {}),
  basis: written.weighed ? 'given' : 'estimated',
  file: matter.file,
  ...lineNumber(matter.lineOf(['sundries', index])),
});

const lineNumber = (line: number | undefined): { readonly line?: number } => (line === undefined ? {} : { line });

/** Reads the studio's stock of things that are packed and not worn in a look. Two of one name are a problem. */
export const readSundries = (matter: FrontMatter): Read<readonly StockLine[]> => {
  const parsed = v.safeParse(sundriesSchema, matter.data);
  if (!parsed.success) return { problems: toProblems(matter, parsed.issues, fieldsOf(sundriesSchema)) };
  const written = parsed.output.sundries;
  const names = written.map(({ name, travellers }) => `${name.toLowerCase()} ${travellers.join(' ')}`);
  const problems = written.flatMap(({ name }, index) =>
    names.indexOf(names[index] ?? '') === index
      ? []
      : [
          {
            file: matter.file,
            line: matter.lineOf(['sundries', index]),
            wrong: `"${name}" is written twice`,
            mend: 'keep one of the two and write how many',
          },
        ],
  );
  return { value: written.map((entry, index) => lineOf(entry, matter, index)), problems };
};
