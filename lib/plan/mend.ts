import type { Brief, Capsule, Occasion, Piece, PlanEntry, PlanMend } from '../model/index.ts';
import type { DressCode, Need } from '../vocabulary/index.ts';
import { phrase } from '../words/index.ts';
import { fixedTo } from './candidates.ts';
import { addDays } from './moments.ts';

/** One small change to the trip or the bag that opens looks. */
export type Opening =
  | { readonly kind: 'piece'; readonly piece: Piece }
  /** Counted from the first day. */
  | { readonly kind: 'wash day'; readonly day: number }
  | { readonly kind: 'dress'; readonly dress: DressCode }
  | { readonly kind: 'need'; readonly need: Need }
  /** Off comfortable in all, °C. */
  | { readonly kind: 'degrees'; readonly degrees: number }
  /** The look the stylist fixed is given up. */
  | { readonly kind: 'free' };

/** A change of a mend: what opens looks, or a piece that stays at home to make room for another. */
export type Change = Opening | { readonly kind: 'leave'; readonly piece: Piece };

const entryOf = (change: Change, occasion: Occasion, brief: Brief, capsule: Capsule): PlanEntry => {
  const inBrief = { file: brief.file, ...(occasion.line === undefined ? {} : { line: occasion.line }) };
  switch (change.kind) {
    case 'piece':
    case 'leave':
      return {
        file: capsule.file,
        ...(capsule.piecesLine === undefined ? {} : { line: capsule.piecesLine }),
        action: change.kind === 'piece' ? 'add' : 'take out',
        field: 'pieces',
        value: change.piece.id,
      };
    case 'wash day':
      return {
        file: brief.file,
        ...(brief.washDaysLine === undefined ? {} : { line: brief.washDaysLine }),
        action: 'add',
        field: 'wash days',
        value: addDays(brief.from, change.day),
      };
    case 'dress':
      return { ...inBrief, action: 'write', field: 'dress', value: change.dress };
    case 'need':
      return { ...inBrief, action: 'take out', field: 'needs', value: change.need };
    case 'degrees':
      return { ...inBrief, action: 'write', field: 'degrees off', value: String(change.degrees) };
    case 'free': {
      const line = fixedTo(capsule, occasion)?.line;
      return {
        file: capsule.file,
        ...(line === undefined ? {} : { line }),
        action: 'take out',
        field: 'fixed',
        value: occasion.what,
      };
    }
  }
};

const degreesOf = (changes: readonly Change[]): number =>
  Math.max(0, ...changes.map((change) => (change.kind === 'degrees' ? change.degrees : 0)));

/** Changes that together serve an occasion, in words, and what to write into which file for them. */
export const mendOf = (
  changes: readonly Change[],
  occasion: Occasion,
  brief: Brief,
  capsule: Capsule,
): Pick<PlanMend, 'what' | 'entries'> => {
  const entries = changes.map((change) => entryOf(change, occasion, brief, capsule));
  return {
    what: phrase('plan', 'mend', {
      pieces: changes.flatMap((change) => (change.kind === 'piece' ? [change.piece.name] : [])),
      left: changes.flatMap((change) => (change.kind === 'leave' ? [change.piece.name] : [])),
      washDays: changes.flatMap((change) => (change.kind === 'wash day' ? [addDays(brief.from, change.day)] : [])),
      dress: changes.find((change) => change.kind === 'dress')?.dress ?? '',
      needs: changes.flatMap((change) => (change.kind === 'need' ? [change.need] : [])),
      degrees: degreesOf(changes),
      free: changes.filter(({ kind }) => kind === 'free').length,
      occasion: occasion.what,
      actions: entries.map(({ action }) => action),
      fields: entries.map(({ field }) => field),
      values: entries.map(({ value }) => value),
      places: entries.map(({ file, line }) => (line === undefined ? file : `${file}:${line}`)),
    }),
    entries,
  };
};
