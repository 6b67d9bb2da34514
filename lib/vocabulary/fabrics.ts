/**
 * Fabrics a piece can be made of. `surface` tells the drawing what to draw; `weight` scales mass, volume and
 * insulation of the kind's default (1 is the kind's usual cloth); `formality` shifts nothing, it is a ceiling on the
 * dress scale (index) above which the cloth is out of place. common practice, no source, unless said otherwise.
 */
export interface Fabric {
  readonly words: readonly string[];
  readonly surface: Surface;
  readonly fibre: 'cotton' | 'linen' | 'wool' | 'silk' | 'synthetic' | 'leather' | 'down' | 'straw' | 'metal' | 'mixed';
  readonly weight: number;
  readonly warmth: number;
  readonly dries: number;
  readonly dressHigh: number;
}

export const SURFACES = [
  'smooth',
  'jersey',
  'denim',
  'twill',
  'corduroy',
  'fine knit',
  'rib knit',
  'cable knit',
  'open knit',
  'linen',
  'satin',
  'lace',
  'leather',
  'patent',
  'suede',
  'fleece',
  'sequin',
  'velvet',
  'tweed',
  'flannel',
  'felt',
  'quilted',
  'shell',
  'canvas',
  'straw',
  'chiffon',
  'towelling',
  'rubber',
  'metal',
  'pearl',
  'tortoiseshell',
  'swim',
] as const;
export type Surface = (typeof SURFACES)[number];

/** Surfaces that dress up. common practice, no source */
export const FINE_SURFACES: ReadonlySet<Surface> = new Set<Surface>(['satin', 'chiffon', 'lace', 'sequin', 'velvet']);

const fabric = (
  surface: Surface,
  fibre: Fabric['fibre'],
  weight: number,
  warmth: number,
  dries: number,
  dressHigh: number,
  words: string,
): Fabric => ({ surface, fibre, weight, warmth, dries, dressHigh, words: words.split(', ') });

export const FABRICS = {
  'cotton poplin': fabric(
    'smooth',
    'cotton',
    0.95,
    0.95,
    1,
    4,
    'poplin, percale, shirting, cotton, oxford cloth, seersucker',
  ),
  'cotton jersey': fabric(
    'jersey',
    'cotton',
    1,
    1,
    1,
    1,
    'jersey, interlock, pique, waffle, cotton knit, cotton fine knit',
  ),
  denim: fabric('denim', 'cotton', 1.15, 1.05, 1.5, 1, 'denim, chambray'),
  'cotton twill': fabric(
    'twill',
    'cotton',
    1.05,
    1,
    1.2,
    2,
    'twill, chino, drill, gabardine, cotton sateen, cotton suiting',
  ),
  corduroy: fabric('corduroy', 'cotton', 1.2, 1.15, 1.5, 1, 'corduroy, cord, needlecord, moleskin'),
  canvas: fabric('canvas', 'cotton', 1.2, 1, 1.4, 1, 'canvas, duck, waxed cotton'),
  flannel: fabric('flannel', 'cotton', 1.15, 1.25, 1.2, 1, 'flannel, brushed cotton'),
  velvet: fabric('velvet', 'mixed', 1.2, 1.15, 1.5, 4, 'velvet, velour'),
  linen: fabric('linen', 'linen', 0.95, 0.85, 0.8, 2, 'linen, ramie, hemp, linen knit, linen suiting'),
  'fine wool': fabric('fine knit', 'wool', 0.85, 1, 1, 3, 'merino, cashmere, fine knit, fine wool'),
  'wool knit': fabric('fine knit', 'wool', 1.15, 1.2, 1.4, 2, 'lambswool, wool knit, knit, mohair, alpaca, angora'),
  'ribbed wool': fabric('rib knit', 'wool', 1.15, 1.2, 1.4, 2, 'rib, ribbed, ribbed wool, ribbed merino'),
  'cable wool': fabric('cable knit', 'wool', 1.4, 1.4, 1.8, 1, 'cable, cable knit, aran'),
  'open knit': fabric('open knit', 'cotton', 0.9, 0.7, 1, 1, 'open knit, crochet, mesh knit, pointelle'),
  'wool cloth': fabric(
    'twill',
    'wool',
    1.1,
    1.15,
    1.5,
    4,
    'worsted, wool, wool twill, suiting, hopsack, serge, barathea',
  ),
  tweed: fabric('tweed', 'wool', 1.3, 1.3, 1.8, 2, 'tweed, boucle, melton, heavy wool'),
  felt: fabric('felt', 'wool', 1.1, 1.2, 1.6, 3, 'felt, boiled wool, felted wool'),
  satin: fabric('satin', 'silk', 0.8, 0.85, 0.7, 4, 'satin, silk satin, charmeuse, bias satin, taffeta'),
  silk: fabric('satin', 'silk', 0.75, 0.9, 0.7, 4, 'silk, silk twill, crepe de chine'),
  crepe: fabric('smooth', 'synthetic', 0.9, 0.9, 0.7, 4, 'crepe, viscose, rayon, lyocell, modal, cupro, georgette'),
  chiffon: fabric('chiffon', 'silk', 0.6, 0.7, 0.6, 4, 'chiffon, voile, organza, tulle, lawn'),
  lace: fabric('lace', 'mixed', 0.75, 0.7, 0.7, 4, 'lace, broderie'),
  sequin: fabric('sequin', 'synthetic', 1.5, 1, 1.2, 4, 'sequin, sequinned'),
  fleece: fabric('fleece', 'synthetic', 1.1, 1.3, 0.7, 0, 'fleece, sweatshirting, teddy'),
  'technical shell': fabric('shell', 'synthetic', 0.8, 0.9, 0.4, 1, 'nylon, polyester, shell, technical, softshell'),
  quilted: fabric('quilted', 'synthetic', 1, 1.4, 1.2, 1, 'quilted, padded'),
  down: fabric('quilted', 'down', 0.8, 1.6, 2.5, 1, 'down'),
  leather: fabric('leather', 'leather', 1.4, 1.1, 3, 3, 'leather, nappa, calf'),
  'patent leather': fabric('patent', 'leather', 1.3, 1, 2, 4, 'patent, patent leather'),
  suede: fabric('suede', 'leather', 1.3, 1.1, 3, 2, 'suede, nubuck'),
  swim: fabric('swim', 'synthetic', 1, 1, 1, 0, 'swim, elastane'),
  towelling: fabric('towelling', 'cotton', 1.3, 1.1, 2, 0, 'towelling, terry'),
  straw: fabric('straw', 'straw', 0.8, 0.5, 1, 2, 'straw, raffia, wicker, jute'),
  rubber: fabric('rubber', 'synthetic', 1.2, 1, 0.3, 0, 'rubber, pvc, eva'),
  metal: fabric('metal', 'metal', 1, 1, 0.1, 4, 'gold, silver, brass, steel, metal, gold-plated'),
  pearl: fabric('pearl', 'mixed', 1, 1, 0.1, 4, 'pearl, pearls, beads, glass, resin, enamel'),
  acetate: fabric('tortoiseshell', 'synthetic', 1, 1, 0.1, 4, 'acetate, horn, tortoiseshell, plastic'),
  'nylon hosiery': fabric('chiffon', 'synthetic', 1, 1, 0.6, 4, 'hosiery, denier, nylon hosiery'),
} as const satisfies Record<string, Fabric>;
export type FabricId = keyof typeof FABRICS;
