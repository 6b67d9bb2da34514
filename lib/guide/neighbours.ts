import type { Look } from '../model/index.ts';

export interface Neighbour {
  readonly number: number;
  readonly out: string;
  readonly in: string;
}

const ids = (look: Look): readonly string[] => look.worn.map(({ piece }) => piece);

/** For each look, the others that differ from it by exactly one piece: which goes out, which comes in. */
export const neighboursOf = (looks: readonly Look[]): readonly (readonly Neighbour[])[] =>
  looks.map((look) => {
    const mine = new Set(ids(look));
    return looks.flatMap((other, index): Neighbour[] => {
      const theirs = new Set(ids(other));
      const goes = [...mine].filter((id) => !theirs.has(id));
      const comes = [...theirs].filter((id) => !mine.has(id));
      const [out, into] = [goes[0], comes[0]];
      return goes.length === 1 && comes.length === 1 && out !== undefined && into !== undefined
        ? [{ number: index + 1, out, in: into }]
        : [];
    });
  });
