import sharp, { type Sharp } from 'sharp';

/** A garment of known colours on a known ground, as a camera might see it. */
export interface Scene {
  readonly name: string;
  readonly ground: string;
  /** Hex colours; the first is the ground colour of the cloth. */
  readonly cloth: readonly string[];
  readonly pattern: 'plain' | 'stripe' | 'check' | 'block';
  /** Light from the darkest to the brightest corner differs by this factor; 1 is even. Its mean is 1. */
  readonly light: number;
  /** Folds brighten and darken the cloth by this share of its light. */
  readonly folds: number;
  /** The weave brightens and darkens single threads by this share of the light. */
  readonly weave: number;
  /** The lens darkens the corners by this share of the light. */
  readonly vignette: number;
  /** The garment throws a soft shade on the ground, at its darkest this share of the light. */
  readonly shade: number;
  /** Standard deviation of the noise, in steps of 255. */
  readonly noise: number;
  /** EXIF orientation 1 to 8. */
  readonly orientation: number;
  readonly format: 'jpeg' | 'png' | 'webp';
  readonly quality: number;
}

const WIDTH = 480;
const HEIGHT = 600;

/** Mulberry32: a small seeded generator of numbers from 0 to 1. */
const generator = (seed: number) => {
  let state = seed;
  return (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let value = Math.imul(state ^ (state >>> 15), 1 | state);
    value = (value + Math.imul(value ^ (value >>> 7), 61 | value)) ^ value;
    return ((value ^ (value >>> 14)) >>> 0) / 4294967296;
  };
};

const bytes = (hex: string): [number, number, number] => [
  Number.parseInt(hex.slice(1, 3), 16),
  Number.parseInt(hex.slice(3, 5), 16),
  Number.parseInt(hex.slice(5, 7), 16),
];

/** The sRGB transfer curve of IEC 61966-2-1, written out here so that the check does not lean on the code under test. */
const toLinear = (byte: number): number => {
  const value = byte / 255;
  return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
};
const toByte = (light: number): number =>
  255 * (light <= 0.0031308 ? light * 12.92 : 1.055 * Math.max(0, light) ** (1 / 2.4) - 0.055);

/** A shirt: body with two sleeves. */
const inGarment = (x: number, y: number): boolean => {
  const body = x > 0.28 && x < 0.72 && y > 0.15 && y < 0.88;
  const sleeve = y > 0.15 + Math.abs(x - 0.5) * 0.35 && y < 0.3 + Math.abs(x - 0.5) * 0.55 && x > 0.1 && x < 0.9;
  const neck = (x - 0.5) ** 2 / 0.01 + (y - 0.14) ** 2 / 0.004 < 1;
  return (body || sleeve) && !neck;
};

/** How much of its shade a garment throws at a place beside it: fading over a few hundredths of the width. */
const shadeAt = (x: number, y: number): number => {
  for (let step = 0; step < 12; step += 1) {
    const away = step * 0.004;
    if (inGarment(x - away, y - away)) return 1 - step / 12;
  }
  return 0;
};

const clothIndex = (pattern: Scene['pattern'], x: number, y: number): number => {
  if (pattern === 'stripe') return (y * 20) % 1 < 0.65 ? 0 : 1;
  if (pattern === 'check') return (x * 10) % 1 < 0.3 || (y * 12) % 1 < 0.3 ? 1 : 0;
  if (pattern === 'block') return y < 0.5 ? 0 : 1;
  return 0;
};

/** True shares of the cloth colours, counted on the undisturbed scene. */
export const trueShares = ({ cloth, pattern }: Scene): readonly number[] => {
  const counts = cloth.map(() => 0);
  for (let y = 0; y < HEIGHT; y += 1) {
    for (let x = 0; x < WIDTH; x += 1) {
      if (!inGarment(x / WIDTH, y / HEIGHT)) continue;
      const index = clothIndex(pattern, x / WIDTH, y / HEIGHT);
      counts[index] = (counts[index] ?? 0) + 1;
    }
  }
  const whole = counts.reduce((sum, count) => sum + count, 0);
  return counts.map((count) => count / whole);
};

/** Turns that bring an upright picture into the way a camera with this EXIF orientation stores it. */
const stored = (upright: Sharp, orientation: number): Sharp => {
  if (orientation === 3) return upright.rotate(180);
  if (orientation === 6) return upright.rotate(270);
  if (orientation === 8) return upright.rotate(90);
  if (orientation === 2) return upright.flop();
  return upright;
};

/** The scene as a file, with EXIF that carries orientation, place and a name. */
export const photograph = async (scene: Scene, seed: number): Promise<Buffer> => {
  const random = generator(seed);
  const gaussian = (): number =>
    Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random()) * scene.noise;
  const ground = bytes(scene.ground).map(toLinear);
  const cloth = scene.cloth.map((hex) => bytes(hex).map(toLinear));
  const half = (scene.light - 1) / (scene.light + 1);
  const raw = Buffer.alloc(WIDTH * HEIGHT * 3);
  for (let row = 0; row < HEIGHT; row += 1) {
    for (let column = 0; column < WIDTH; column += 1) {
      const x = column / WIDTH;
      const y = row / HEIGHT;
      const inside = inGarment(x, y);
      const colour = inside ? cloth[clothIndex(scene.pattern, x, y)] : ground;
      const thread = scene.weave * ((row + (column >> 1)) % 3 === 0 ? -1 : 0.5);
      const local = inside ? 1 + scene.folds * Math.sin(x * 23 + y * 9) + thread : 1 - scene.shade * shadeAt(x, y);
      const corner = 1 - scene.vignette * 2 * ((x - 0.5) ** 2 + (y - 0.5) ** 2);
      const light = (1 + half * (x + y - 1)) * local * corner;
      for (let channel = 0; channel < 3; channel += 1) {
        const value = toByte((colour?.[channel] ?? 0) * light) + gaussian();
        raw[(row * WIDTH + column) * 3 + channel] = Math.round(Math.min(255, Math.max(0, value)));
      }
    }
  }
  const picture = stored(sharp(raw, { raw: { width: WIDTH, height: HEIGHT, channels: 3 } }), scene.orientation);
  const lossless = await picture.png({ compressionLevel: 1 }).toBuffer();
  const tagged = sharp(lossless)
    .withMetadata({ orientation: scene.orientation })
    .withExifMerge({
      IFD0: { Artist: 'Ada Example', Copyright: 'secret-owner' },
      IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '48/1 12/1 0/1' },
    });
  const coded =
    scene.format === 'png'
      ? tagged.png({ compressionLevel: 1 })
      : scene.format === 'webp'
        ? tagged.webp({ quality: scene.quality })
        : tagged.jpeg({ quality: scene.quality });
  return coded.toBuffer();
};

const scene = (over: Partial<Scene> & Pick<Scene, 'name' | 'cloth'>): Scene => ({
  ground: '#f2f0ec',
  pattern: 'plain',
  light: 1,
  noise: 4,
  folds: 0,
  weave: 0,
  vignette: 0,
  shade: 0,
  orientation: 1,
  format: 'jpeg',
  quality: 85,
  ...over,
});

/** Scenes from easy to hard: plain and patterned, on white, grey, wood, black; noise, uneven light, turned, pressed. */
export const SCENES: readonly Scene[] = [
  scene({ name: 'rust on white', cloth: ['#a4492a'] }),
  scene({ name: 'navy on white, noise', cloth: ['#1f2a44'], noise: 12 }),
  scene({ name: 'bottle green, uneven light', cloth: ['#17402f'], light: 1.5 }),
  scene({ name: 'mustard, uneven light, noise', cloth: ['#c2922a'], light: 1.6, noise: 10 }),
  scene({ name: 'cream on grey', cloth: ['#f2e8d0'], ground: '#8b8c8f' }),
  scene({ name: 'off-white on white, PNG', cloth: ['#ddd3c0'], ground: '#fbfbfa', format: 'png', noise: 2 }),
  scene({ name: 'black on grey, turned', cloth: ['#1a1a1b'], ground: '#b5b3b0', orientation: 6 }),
  scene({ name: 'dusty pink on wood', cloth: ['#cfa3a1'], ground: '#8a6a4a', orientation: 8 }),
  scene({ name: 'cobalt on black, WebP', cloth: ['#1c4bb0'], ground: '#202020', format: 'webp' }),
  scene({ name: 'lilac, pressed hard', cloth: ['#c5acd2'], quality: 35, noise: 8 }),
  scene({ name: 'scarlet, strong light fall-off', cloth: ['#cf2a27'], light: 1.9, orientation: 3 }),
  scene({ name: 'navy and white stripe', cloth: ['#f4f1ea', '#1f2a44'], pattern: 'stripe', ground: '#c9b79c' }),
  scene({
    name: 'rust and cream stripe, uneven',
    cloth: ['#a4492a', '#f2e8d0'],
    pattern: 'stripe',
    ground: '#9aa3a8',
    light: 1.4,
  }),
  scene({ name: 'green and mustard check', cloth: ['#24472f', '#c2922a'], pattern: 'check', noise: 8 }),
  scene({
    name: 'teal and coral block, turned',
    cloth: ['#16696c', '#ec7464'],
    pattern: 'block',
    orientation: 6,
    light: 1.3,
  }),
  scene({
    name: 'plum and pink block, pressed',
    cloth: ['#5e2a4e', '#e79aae'],
    pattern: 'block',
    quality: 40,
    noise: 10,
  }),
  scene({ name: 'denim with folds and shade', cloth: ['#45628a'], folds: 0.3, shade: 0.3 }),
  scene({
    name: 'camel with folds, uneven',
    cloth: ['#bd945f'],
    folds: 0.25,
    shade: 0.25,
    light: 1.4,
    ground: '#dedbd5',
  }),
  scene({
    name: 'wine and sand stripe, folds',
    cloth: ['#5e1e2e', '#d2bd96'],
    pattern: 'stripe',
    folds: 0.2,
    shade: 0.2,
    noise: 8,
  }),
  scene({ name: 'pale blue on white, shade', cloth: ['#c6dbec'], shade: 0.2, folds: 0.06 }),
  scene({ name: 'charcoal tweed, dark corners', cloth: ['#3c3d42'], weave: 0.35, vignette: 0.4, noise: 8 }),
  scene({
    name: 'linen in hard light',
    cloth: ['#d9ccb4'],
    ground: '#7d8288',
    weave: 0.2,
    folds: 0.25,
    light: 1.6,
    shade: 0.4,
    noise: 10,
    quality: 60,
  }),
  scene({
    name: 'olive in the evening, grainy',
    cloth: ['#565a33'],
    ground: '#b9b2a6',
    noise: 20,
    vignette: 0.35,
    light: 1.5,
    quality: 50,
  }),
  scene({
    name: 'rust and navy check, worn and creased',
    cloth: ['#a4492a', '#1f2a44'],
    pattern: 'check',
    ground: '#d5cfc4',
    folds: 0.3,
    weave: 0.2,
    shade: 0.3,
    light: 1.4,
    noise: 10,
    quality: 55,
  }),
  scene({ name: 'thumbnail-grade JPEG, wine', cloth: ['#5e1e2e'], quality: 12, noise: 6, light: 1.3 }),
  scene({ name: 'mirrored sage', cloth: ['#9ba78d'], orientation: 2, ground: '#ffffff' }),
];
