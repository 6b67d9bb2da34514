import type { Point } from '../drawing.ts';
import type { Cloth } from '../fabric/index.ts';
import { cubics, type Garment, line, type Node, type Painted, type PanelOptions, pen, stitch } from '../kit/index.ts';
import type { Last } from './last.ts';

/** A node on the last: share of the length, share of the way around, corner or not. */
export type OnLast = Node;

/** Draws on one shoe: lines and patches given on the last come out where they lie in the picture. */
export class ShoeArtist {
  readonly garment: Garment;
  readonly last: Last;
  /** The shoe that lies behind: drawn with less. */
  readonly behind: boolean;

  constructor(garment: Garment, last: Last, behind: boolean) {
    this.garment = garment;
    this.last = last;
    this.behind = behind;
  }

  get cloth(): Cloth {
    return this.garment.cloth;
  }

  get small(): boolean {
    return this.garment.small;
  }

  /** Nodes on the last bent along its surface and set on paper. */
  mapped(nodes: readonly OnLast[], closed = false, puff = 0, steps = 3): Node[] {
    const pieces = cubics(nodes, closed);
    const first = nodes[0];
    if (first === undefined) return [];
    const place = (t: number, around: number): Point => this.last.on(t, around, puff);
    const result: Node[] = closed ? [] : [[...place(first[0], first[1]), 'corner']];
    pieces.forEach(([p, a, b, q], i) => {
      for (let k = 1; k <= steps; k++) {
        const [t, u] = [k / steps, 1 - k / steps];
        const at = (axis: 0 | 1): number =>
          u * u * u * p[axis] + 3 * u * u * t * a[axis] + 3 * u * t * t * b[axis] + t * t * t * q[axis];
        const sharp = k === steps && nodes[(i + 1) % nodes.length]?.[2] === 'corner';
        const on = place(at(0), at(1));
        result.push(sharp ? [on[0], on[1], 'corner'] : [on[0], on[1]]);
      }
    });
    return result;
  }

  /** A part sewn onto the upper. */
  patch(nodes: readonly OnLast[], options: PanelOptions & { readonly puff?: number } = {}): this {
    this.garment.panel(this.mapped(nodes, true, options.puff ?? 0.04), {
      covers: false,
      edge: 0.3,
      wobble: 0.02,
      rim: false,
      ...options,
    });
    return this;
  }

  seam(nodes: readonly OnLast[], width = 0.2, colour = this.cloth.ink, opacity = 0.8): this {
    this.garment.add(pen(this.mapped(nodes), this.small ? width * 1.7 : width, colour, opacity, 0.5));
    return this;
  }

  /** One or two rows of stitches; left out of small drawings. */
  stitches(nodes: readonly OnLast[], colour = this.cloth.bright, opacity = 0.6): this {
    if (!this.small) this.garment.add(stitch(this.mapped(nodes), colour, opacity));
    return this;
  }

  line(nodes: readonly OnLast[], width: number, colour: string, opacity = 1, puff = 0): this {
    this.garment.add(line(this.mapped(nodes, false, puff), width, colour, opacity));
    return this;
  }

  plane(nodes: readonly OnLast[], width: number, colour: string, opacity: number, peak = 0.5): Painted {
    return this.garment.plane(this.mapped(nodes), width, colour, opacity, peak);
  }

  fold(nodes: readonly OnLast[], width: number, strength: number): Painted {
    return this.garment.fold(this.mapped(nodes), width, strength);
  }

  /** Nodes along the sole's near rim. */
  rim(level: number, welt: number, from = 0, to = 1, side: 'near' | 'far' = 'near', count = 14): Node[] {
    return Array.from({ length: count + 1 }, (_, i) => {
      const t = from + ((to - from) * (1 - Math.cos((Math.PI * i) / count))) / 2;
      const [x, y] = this.last.rim(t, side, level, welt);
      return [x, y];
    });
  }
}
