import type { WardrobeEngine } from '../outfit/index.ts';
import type { LookSource } from '../plan/index.ts';

/** An engine as the plan asks for looks: reasons are sentences, not verdicts; refused pieces are worn in none. */
export const lookSourceOf = (engine: WardrobeEngine, refused: ReadonlySet<string> = new Set()): LookSource => ({
  rank: (k, restriction) => engine.rank(k, { ...restriction, without: [...(restriction?.without ?? []), ...refused] }),
  explain: (ids, restriction) => {
    const { goes, look, reasons } = engine.explain([...ids], restriction);
    const said = reasons.map(({ message }) => message);
    return look === undefined ? { goes, reasons: said } : { goes, look, reasons: said };
  },
});
