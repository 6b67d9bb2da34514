import type { Problem } from '../model/index.ts';

/** A record that was read, or the problems that stopped it; both together when the record is usable all the same. */
export interface Read<T> {
  readonly value?: T;
  readonly problems: readonly Problem[];
}

/** Gives what was read and keeps its problems. */
export type Take = <T>(read: Read<T>) => T | undefined;
