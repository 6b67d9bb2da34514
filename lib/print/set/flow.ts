import type { Block } from './block.ts';
import { stack } from './block.ts';

/** A block in a flow of text. */
export interface FlowItem {
  readonly block: Block;
  /** Never the last on a page: it belongs to what follows. */
  readonly withNext?: boolean;
  /** Space above, unless it stands at the top of a page. */
  readonly above?: number;
}

interface Placed {
  readonly item: FlowItem;
  readonly block: Block;
  readonly above: number;
}

const MOST_PAGES = 2000;

/**
 * Fills frames of one width, one after another, and gives what goes into each. `room` is the height of the nth frame.
 * A block higher than a whole frame that cannot be broken overflows it: nothing is dropped.
 */
export const flow = (items: readonly FlowItem[], width: number, room: (frame: number) => number): readonly Block[] => {
  const frames: Block[] = [];
  let held: Placed[] = [];
  let used = 0;
  let rest = [...items];
  const close = (): readonly FlowItem[] => {
    const back: FlowItem[] = [];
    while (held.length > 1 && held.at(-1)?.item.withNext === true) {
      const last = held.pop();
      if (last !== undefined) back.unshift({ ...last.item, block: last.block });
    }
    frames.push(
      stack(
        held.flatMap(({ block, above }) =>
          above > 0 ? [{ height: () => above, paint: () => undefined }, block] : [block],
        ),
      ),
    );
    held = [];
    used = 0;
    return back;
  };
  while (rest.length > 0 && frames.length < MOST_PAGES) {
    const item = rest[0];
    if (item === undefined) break;
    const above = held.length === 0 ? 0 : (item.above ?? 0);
    const left = room(frames.length) - used - above;
    const height = item.block.height(width);
    if (height <= left + 1e-6) {
      held.push({ item, block: item.block, above });
      used += above + height;
      rest = rest.slice(1);
      continue;
    }
    const halves = item.block.split?.(width, left);
    if (halves !== undefined) {
      held.push({ item: { ...item, withNext: false }, block: halves[0], above });
      rest = [...close(), { ...item, block: halves[1], above: 0 }, ...rest.slice(1)];
    } else if (held.length > 0) {
      rest = [...close(), ...rest];
    } else {
      held.push({ item, block: item.block, above });
      rest = [...close(), ...rest.slice(1)];
    }
  }
  if (held.length > 0) close();
  return frames;
};

const LEVELS = 40;

/** The same, in no more frames, with the last about as full as the others: no frame is left with a stray line. */
export const levelFlow = (
  items: readonly FlowItem[],
  width: number,
  room: (frame: number) => number,
): readonly Block[] => {
  let frames = flow(items, width, room);
  for (let step = 1; frames.length > 1 && step < LEVELS; step++) {
    const lower = flow(items, width, (frame) => room(frame) * (1 - step / LEVELS));
    if (lower.length > frames.length) break;
    frames = lower;
  }
  return frames;
};
