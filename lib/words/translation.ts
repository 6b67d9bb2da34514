import type { Formats } from './formats.ts';

type ValuesOf<S> = S extends (values: infer V, ...rest: never[]) => string ? V : never;

/** A room said in another language: the keys of the English room, each sentence taking the values of the English one. */
export type Translation<Room> = {
  readonly [Key in keyof Room]: (values: ValuesOf<Room[Key]>, formats: Formats) => string;
};
