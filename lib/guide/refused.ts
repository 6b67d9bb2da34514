import type { Brief, Finding, HouseRuleSettings, Piece } from '../model/index.ts';
import { keepsOffSkin, wornOffSkin } from '../outfit/index.ts';
import { fabricRefused } from '../vocabulary/index.ts';
import { phrase } from '../words/index.ts';

/** Pieces that the client wears in no look, by cloth or by heel; what may not touch the skin is kept off it by the house rules. */
export const piecesNotWorn = (pieces: readonly Piece[], brief: Brief): readonly string[] => [
  ...new Set(refusalFindings(pieces, brief, {}).flatMap(({ level, about }) => (level === 'error' ? about : []))),
];

/** What `check` says of pieces that the client refuses by cloth or by heel; `rules` are the studio's with the capsule's own. */
export const refusalFindings = (
  pieces: readonly Piece[],
  { avoid }: Brief,
  rules: HouseRuleSettings,
): readonly Finding[] =>
  pieces.flatMap((piece): Finding[] => {
    const { id, name, file, heelCm, fabricText } = piece;
    const refused = fabricRefused(piece, avoid.fabrics);
    const mostCm = avoid.heelCmOver;
    const at = { level: 'error', file, about: [id] } as const;
    return [
      ...(refused === undefined
        ? []
        : [
            {
              ...at,
              rule: 'fabric-refused',
              message: phrase('check', 'fabric refused', { piece: name, fabric: fabricText, refused }),
              reason: phrase('check', 'fabric refused why', {}),
              mend: phrase('check', 'fabric refused mend', {}),
            },
          ]),
      ...(!keepsOffSkin(rules) || piece.offSkin !== true || wornOffSkin(piece)
        ? []
        : [
            {
              level: 'warning',
              rule: 'against-skin',
              message: phrase('check', 'against skin', { piece: name, fabric: fabricText }),
              reason: phrase('check', 'fabric refused why', {}),
              mend: phrase('check', 'against skin mend', {}),
              file,
              about: [id],
            } as const,
          ]),
      ...(mostCm === undefined || heelCm <= mostCm || !piece.places.includes('shoes')
        ? []
        : [
            {
              ...at,
              rule: 'heel-refused',
              message: phrase('check', 'heel refused', { piece: name, heelCm, mostCm }),
              mend: phrase('check', 'heel refused mend', {}),
            },
          ]),
    ];
  });
