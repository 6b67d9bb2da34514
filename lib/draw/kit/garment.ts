import type { Detail, Drawing, DrawnPiece, Mark, Matrix, Paint, Point, Tile } from '../drawing.ts';
import { type Cloth, fabric } from '../fabric/index.ts';
import { castMarks, contourMarks, edgeMarks } from './edge-marks.ts';
import { boxAround } from './extent.ts';
import { type Node, reversed, signedArea } from './geometry.ts';
import { buttonMark } from './notions.ts';
import { curvePath, polygonPath, sampleCurve } from './paths.ts';
import { group, line, type Painted, shape } from './pens.ts';
import { type Random, random, seedOf } from './random.ts';
import { foldMarks, planeMarks, roundMarks } from './shading.ts';

export interface PanelOptions {
  readonly cloth?: Cloth;
  /** Degrees the grain of the cloth is turned in this panel (clockwise). */
  readonly turn?: number;
  /** Centimetres the pattern is moved in this panel, along the panel's own grain. */
  readonly shift?: Point;
  /** Painted on the panel, clipped to it, under the edge shade. */
  readonly inner?: readonly Painted[];
  /** Shades the panel as a tube from one side to the other: light at a third, dark at the far side. */
  readonly round?: { readonly from: Point; readonly to: Point; readonly strength?: number };
  /** Whether the panel counts as outline; false for what lies on the body (pockets, plackets). Default true. */
  readonly covers?: boolean;
  /** Strength of the shade along the edge; 0 for none. Default 1. */
  readonly edge?: number;
  /** Centimetres the outline wanders, for a hand-drawn line. Default 0.14. */
  readonly wobble?: number;
  /** Another fill than the ground of the cloth. */
  readonly fill?: Paint;
  /** Light along the upper left edge. Default true. */
  readonly rim?: boolean;
  /** Shade thrown on what lies beneath, in units of 1 (a lapel); 0 for none, the default. */
  readonly cast?: number;
  /** The part that shade falls on, a path; without one it also falls on what lies beside it. */
  readonly castOn?: string | undefined;
  /** Whether the tiles of the cloth are laid on. Default true. */
  readonly weave?: boolean;
  /** Whether the print is laid on; false where it is drawn as geometry. Default true. */
  readonly print?: boolean;
  /** Whether the weave, as apart from the print, is laid on; false where ribs or baffles are drawn as geometry. */
  readonly knit?: boolean;
  /** Whether `inner` keeps within the panel by itself, so that a small part needs no clip. Default: only without inner. */
  readonly loose?: boolean;
  /** Whether the panel has a contour of its own; false when `silhouette` was drawn beneath. Default true. */
  readonly contour?: boolean;
}

/** Assembles a Drawing: parts of cloth with their folds, shade, seams and contour, from back to front. */
export class Garment {
  readonly cloth: Cloth;
  readonly detail: Detail;
  /** Cut from several plain cloths. */
  readonly blocked: boolean;
  /** Seeded by wardrobe and id: the same piece always looks the same. */
  readonly random: Random;
  private readonly painted: Painted[] = [];
  private readonly rings: Point[][] = [];
  private readonly tiles: Tile[] = [];
  private readonly anchors: Record<string, Point> = {};

  constructor(piece: DrawnPiece, detail: Detail, cloth: Cloth = fabric(piece, detail)) {
    this.cloth = cloth;
    this.detail = detail;
    this.blocked = piece.pattern.type === 'colour block';
    this.random = random(seedOf(`${piece.wardrobe}/${piece.id}`));
  }

  get small(): boolean {
    return this.detail === 'small';
  }

  /** A number from -amount to amount. */
  jitter(amount = 0.25): number {
    return (this.random() - 0.5) * 2 * amount;
  }

  /** Nodes moved a little each, as a hand would. */
  wobble(nodes: readonly Node[], amount = 0.16): Node[] {
    return nodes.map(([x, y, c]) => [x + this.jitter(amount), y + this.jitter(amount), c]);
  }

  add(...marks: readonly Painted[]): this {
    this.painted.push(...marks);
    return this;
  }

  anchor(name: string, point: Point): this {
    this.anchors[name] = point;
    return this;
  }

  /** A fold: a lopsided valley of shade, light on the ridge beside it, a short crisp mark at its root. */
  fold(nodes: readonly Node[], width: number, strength = 1, peak = 0.3, cloth = this.cloth): Painted {
    return foldMarks(nodes, width, strength, peak, cloth, this.detail);
  }

  /** A broad soft plane of light or shade along a line; `width` is half its breadth. */
  plane(nodes: readonly Node[], width: number, colour: string, opacity: number, peak = 0.5): Painted {
    return planeMarks(nodes, width, colour, opacity, peak, this.detail);
  }

  /** A paint of the garment's tiles, turned and moved; registers the tile. */
  tilePaint(tile: Tile, turn = 0, shift: Point = [0, 0]): Paint {
    const angle = (Math.round(turn) * Math.PI) / 180;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    const [a, b, c, d, e, f] = tile.transform ?? [1, 0, 0, 1, 0, 0];
    const [x, y] = [shift[0] + e, shift[1] + f];
    const transform: Matrix = [
      cos * a - sin * b,
      sin * a + cos * b,
      cos * c - sin * d,
      sin * c + cos * d,
      cos * x - sin * y,
      sin * x + cos * y,
    ];
    const known = this.tiles.find(
      (other) =>
        other.marks === tile.marks && other.transform?.every((v, i) => Math.abs(v - (transform[i] ?? 0)) < 1e-6),
    );
    if (known && known.ground === tile.ground) return { tile: known.name };
    const name = `${tile.name} ${this.tiles.length + 1}`;
    this.tiles.push({ ...tile, name, transform });
    return { tile: name };
  }

  /** A part of cloth: contour, ground, weave, what lies on it, edge shade. */
  panel(nodes: readonly Node[], options: PanelOptions = {}): this {
    const cloth = options.cloth ?? this.cloth;
    const outline = this.wobble(nodes, options.wobble ?? 0.14);
    const path = curvePath(outline);
    const edge = options.edge ?? 1;
    if (options.covers !== false) this.cover(outline);
    if (options.cast) {
      const cast = castMarks(path, options.cast, cloth, this.detail);
      this.add(options.castOn === undefined ? cast : group([cast], { clip: options.castOn }));
    }
    if (options.contour !== false) this.add(contourMarks(path, cloth, this.detail));
    this.add(shape(path, options.fill ?? cloth.ground));
    const inside: Painted[] = [];
    if (options.weave !== false)
      for (const tile of cloth.tiles)
        if (tile.name === 'print' ? options.print !== false : options.knit !== false)
          inside.push(shape(path, this.tilePaint(tile, options.turn, options.shift)));
    if (options.round) {
      const { from, to, strength = 1 } = options.round;
      inside.push(roundMarks(outline, from, to, strength, cloth, this.detail));
    }
    inside.push(...(options.inner ?? []));
    if (options.covers === false && !options.round && (options.loose ?? !options.inner?.length)) {
      // a small flat part: a thin line all round instead of shade that would have to be clipped
      const rim: Mark = { path, stroke: cloth.ink, width: 0.12, opacity: 0.5 };
      return this.add(...inside, ...(this.small ? [] : [rim]));
    }
    if (edge > 0) {
      const light = { rim: options.rim !== false, shaded: options.round !== undefined };
      inside.push(...edgeMarks(path, edge, light, cloth, this.detail));
    }
    this.add(group(inside, { clip: path }));
    return this;
  }

  /** The contour alone, to be drawn beneath parts that join without a line. */
  silhouette(nodes: readonly Node[], cloth = this.cloth): this {
    return this.add(contourMarks(curvePath(nodes), cloth, this.detail));
  }

  /** The inside of the garment, seen through an opening; a label may be sewn in at `label`. */
  inside(nodes: readonly Node[], options: { readonly fill?: string; readonly label?: Point } = {}): this {
    const fill = options.fill ?? this.cloth.lining;
    const path = curvePath(nodes);
    this.cover(nodes);
    const marks: Painted[] = (this.small ? [2] : [3.4, 1.6]).map((width) => line(path, width, this.cloth.ink, 0.2));
    if (options.label && !this.small) {
      const [x, y] = options.label;
      marks.push(
        shape(
          polygonPath([
            [x - 1.9, y],
            [x + 1.9, y],
            [x + 1.9, y + 1.5],
            [x - 1.9, y + 1.5],
          ]),
          '#efe7d6',
          0.92,
        ),
        line(
          [
            [x - 1.1, y + 0.78],
            [x + 1.1, y + 0.78],
          ],
          0.16,
          this.cloth.ink,
        ),
      );
    }
    return this.add(shape(path, fill), group(marks, { clip: path }));
  }

  button(x: number, y: number, radius: number, colour: string): this {
    return this.add(buttonMark([x, y], radius, colour, this.cloth.ink, this.detail));
  }

  /** Counts a ring as covered by the garment. */
  cover(nodes: readonly Node[]): this {
    const ring = sampleCurve(nodes, true, 3);
    this.rings.push(signedArea(ring) < 0 ? reversed(ring) : ring);
    return this;
  }

  /** The finished drawing, its box fitted to the outline. */
  finish(): Drawing {
    const cloth: Paint = this.cloth.swatch ? this.tilePaint(this.cloth.swatch) : this.cloth.ground;
    return {
      box: boxAround(this.rings, 0.35),
      outline: this.rings,
      tiles: this.tiles,
      marks: this.painted,
      anchors: this.anchors,
      cloth,
    };
  }
}
