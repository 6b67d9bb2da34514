import type { Detail, Drawing, DrawnPiece, Tile } from '../../lib/draw/drawing.ts';
import type { Sundry } from '../../lib/model/index.ts';
import { KINDS } from '../../lib/vocabulary/index.ts';

const SHAPES: Readonly<Record<string, string>> = {
  top: 'M20 4L34 0L46 4L80 30L70 40L60 30L60 66L20 66L20 30L10 40L0 30Z',
  long: 'M20 4L34 0L46 4L74 50L66 54L58 34L64 110L14 110L22 34L12 54L4 50Z',
  bottom: 'M6 0L40 0L46 104L28 104L23 30L18 104L0 104Z',
  skirt: 'M14 0L50 0L64 74L0 74Z',
  shoe: 'M0 10C6 2 10 0 14 4L28 9L28 13L0 13Z',
  small: 'M0 6C0 -2 20 -2 20 6C20 20 0 20 0 6Z',
};

const shapeOf = ({ kind }: DrawnPiece): string => {
  const { group, places } = KINDS[kind];
  if (group === 'shoes') return 'shoe';
  if (group === 'coats' || group === 'one-pieces') return 'long';
  if (places.includes('bottom')) return kind.includes('skirt') ? 'skirt' : 'bottom';
  return group === 'tops' || group === 'knits' || group === 'layers' ? 'top' : 'small';
};

const boxOf = (path: string): Drawing['box'] => {
  const numbers = [...path.matchAll(/-?\d+(?:\.\d+)?/g)].map(([found]) => Number(found));
  const xs = numbers.filter((_, index) => index % 2 === 0);
  const ys = numbers.filter((_, index) => index % 2 === 1);
  return {
    x: Math.min(...xs),
    y: Math.min(...ys),
    width: Math.max(...xs) - Math.min(...xs),
    height: Math.max(...ys) - Math.min(...ys),
  };
};

const stripes = (ground: string, stripe: string): Tile => ({
  name: 'cloth',
  width: 4,
  height: 6,
  ground,
  marks: [{ path: 'M0 0L4 0L4 2L0 2Z', fill: stripe }],
});

/** A plain silhouette with a seam, true in size: enough to test how drawings are printed. */
export const drawSilhouette = (piece: DrawnPiece, detail: Detail): Drawing => {
  const path = SHAPES[shapeOf(piece)] ?? '';
  const [ground, second] = piece.colours;
  const hex = ground?.hex ?? '#888888';
  const patterned = piece.pattern.type !== 'plain';
  const tiles = patterned ? [stripes(hex, second?.hex ?? '#ffffff')] : [];
  const cloth = patterned ? { tile: 'cloth' } : hex;
  const box = boxOf(path);
  const middle = box.x + box.width / 2;
  return {
    box,
    outline: [
      [
        [box.x, box.y],
        [box.x + box.width, box.y],
        [box.x + box.width, box.y + box.height],
        [box.x, box.y + box.height],
      ],
    ],
    tiles,
    marks: [
      { path, fill: cloth, stroke: '#222222', width: detail === 'small' ? 1 : 0.4 },
      {
        clip: path,
        opacity: 0.4,
        marks: [{ path: `M${middle} ${box.y}L${middle} ${box.y + box.height}`, stroke: '#000000', width: 0.5 }],
      },
    ],
    anchors: {},
    cloth,
  };
};

export const drawThing = (_sundry: Sundry): Drawing => {
  const path = 'M2 0L12 0L12 14L2 14Z';
  return {
    box: boxOf(path),
    outline: [],
    tiles: [],
    marks: [{ path, stroke: '#27323f', width: 0.8 }],
    anchors: {},
    cloth: '#27323f',
  };
};
