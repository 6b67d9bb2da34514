import type { Cutout, LayItem } from '../draw/flat-lay/index.ts';
import { type Detail, type Drawing, drawPiece, type Point } from '../draw/index.ts';
import type { Guide } from '../guide/index.ts';
import type { Finding, Look, Piece } from '../model/index.ts';
import { cutOutPhoto, type PhotoCutout } from '../photo/index.ts';
import { type Slot, type Tuck, tucksOf } from '../vocabulary/index.ts';
import { capital, phrase } from '../words/index.ts';

/** Longest side of a photo's cut-out, pixels: enough for a card. */
const CUTOUT_SIDE = 900;

/** How each piece of a guide looks: drawn, or cut out of its photo. */
export interface Motifs {
  item(piece: string, slot: Slot, detail: Detail): LayItem;
  itemsOf(look: Look, detail: Detail): readonly LayItem[];
  /** Photos that could not be used, with the reason. */
  readonly findings: readonly Finding[];
}

/** A cut-out is as high as the drawing it stands in for, so that it lies at the same scale, and lies around its middle. */
export const asCutout = ({ png, width, height, outline }: PhotoCutout, drawing: Drawing): Cutout => {
  const pxPerCm = height / drawing.box.height;
  const across = width / pxPerCm;
  const middle = drawing.box.x + drawing.box.width / 2;
  const box = { x: middle - across / 2, y: drawing.box.y, width: across, height: drawing.box.height };
  const rings = outline.map((ring) => ring.map(([x, y]): Point => [box.x + x * box.width, box.y + y * box.height]));
  const hem = hemOf(rings, box.y + box.height);
  return {
    png,
    pxPerCm,
    box,
    outline: rings,
    anchors: hem === undefined ? drawing.anchors : { ...drawing.anchors, hem },
  };
};

/** Middle of the lowest tenth of a garment: where the next piece is tucked under. */
const hemOf = (rings: readonly (readonly Point[])[], bottom: number): Point | undefined => {
  const points = rings.flat();
  const top = Math.min(...points.map(([, y]) => y));
  const low = points.filter(([, y]) => y > bottom - (bottom - top) / 10).map(([x]) => x);
  return low.length === 0 ? undefined : [(Math.min(...low) + Math.max(...low)) / 2, bottom];
};

/** Draws every piece of a guide, or cuts it out of its photo. */
export const motifsOf = async (pieces: readonly Piece[], contentFolder: string): Promise<Motifs> => {
  const cutouts = new Map<string, Cutout>();
  const findings: Finding[] = [];
  for (const piece of pieces) {
    if (piece.photo === undefined) continue;
    const cut = await cutOutPhoto(contentFolder, piece.photo, CUTOUT_SIDE);
    if (cut.ok) {
      cutouts.set(piece.id, asCutout(cut.value, drawPiece(piece, 'full')));
    } else {
      findings.push({
        level: 'warning',
        rule: 'photo',
        message: phrase('guide', 'photo not used', { piece: piece.name, why: cut.trouble.wrong }),
        mend: phrase('guide', 'as written', { text: `${capital(cut.trouble.mend)}.` }),
        file: piece.file,
        ...(piece.lines?.photo === undefined ? {} : { line: piece.lines.photo }),
        about: [piece.id],
      });
    }
  }
  const byId = new Map(pieces.map((piece) => [piece.id, piece]));
  const drawn = new Map<string, Drawing>();
  const pictureOf = (id: string, detail: Detail, tuck?: Tuck): Drawing | Cutout => {
    const cutout = cutouts.get(id);
    if (cutout !== undefined) return cutout;
    const key = `${detail} ${id} ${tuck ?? ''}`;
    const known = drawn.get(key);
    if (known !== undefined) return known;
    const piece = byId.get(id);
    if (piece === undefined) throw new Error(`no piece ${id}`);
    const drawing = drawPiece({ ...piece, tuck }, detail);
    drawn.set(key, drawing);
    return drawing;
  };
  return {
    item: (id, slot, detail) => ({ id, slot, picture: pictureOf(id, detail) }),
    itemsOf: ({ worn }, detail) => {
      const kinds = worn.flatMap(({ piece, slot }) => {
        const kind = byId.get(piece)?.kind;
        return kind === undefined ? [] : [{ kind, slot }];
      });
      // a photo shows a top at its full length
      const loose = worn.some(({ piece, slot }) => slot === 'top' && cutouts.has(piece));
      const tucks = loose ? [] : tucksOf(kinds);
      return worn.map(({ piece: id, slot }, index) => {
        const tuck = tucks[index];
        return { id, slot, picture: pictureOf(id, detail, tuck), tuck };
      });
    },
    findings,
  };
};

/** What the picture of a piece depends on. */
export const motifKey = (piece: Piece): unknown => {
  const { id, wardrobe, kind, colours, pattern, cut, length, lengthCm, heelCm, fabric, covers, photo } = piece;
  return { id, wardrobe, kind, colours, pattern, cut, length, lengthCm, heelCm, fabric, covers, photo };
};

/** What the picture of a look depends on. */
export const lookKey = (look: Look, guide: Guide): unknown =>
  look.worn.map(({ piece, slot }) => [slot, motifKey(guide.pieces.find(({ id }) => id === piece) as Piece)]);
