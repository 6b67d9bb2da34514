import { num, nums, rgb } from './numbers.ts';
import type { Opacities, Resources } from './resources.ts';

interface Held {
  readonly fill: string;
  readonly stroke: string;
  readonly width: number;
  readonly dash: string;
  readonly round: boolean;
  readonly opacity: number;
}

/** A form begins in the state of whoever paints it (ISO 32000-1, 8.10.1): nothing is known of it until it is said. */
const UNKNOWN: Partial<Held> = {};

/** Writes the operators of a form and says again only what has changed since the last mark. */
export interface Pen {
  raw(operators: string): void;
  opacity(value: number): void;
  fill(colour: string): void;
  stroke(colour: string, width: number, dash: readonly number[], round: boolean): void;
  /** What is set inside is forgotten after it. */
  inside(paint: () => void): void;
  text(): string;
}

export const createPen = (resources: Resources, opacities: Opacities): Pen => {
  const lines: string[] = [];
  let held = UNKNOWN;
  const set = <K extends keyof Held>(key: K, value: Held[K], operators: string): void => {
    if (held[key] === value) return;
    held = { ...held, [key]: value };
    lines.push(operators);
  };
  return {
    raw: (operators) => {
      lines.push(operators);
    },
    opacity: (value) => {
      const rounded = Math.round(value * 100) / 100;
      if (held.opacity !== rounded) set('opacity', rounded, `/${opacities.use(resources, rounded)} gs`);
    },
    fill: (colour) => set('fill', colour, `${rgb(colour)} rg`),
    stroke: (colour, width, dash, round) => {
      set('stroke', colour, `${rgb(colour)} RG`);
      set('width', width, `${num(width)} w`);
      set('dash', nums(...dash), `[${nums(...dash)}] 0 d`);
      set('round', round, round ? '1 J 1 j' : '0 J 0 j');
    },
    inside: (paint) => {
      const before = held;
      lines.push('q');
      paint();
      lines.push('Q');
      held = before;
    },
    text: () => lines.join('\n'),
  };
};
