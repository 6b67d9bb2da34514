import { neighboursOf, oklabPlanes, type Pixels, type Planes, pixelDistance, smoothed } from './pixels.ts';
import { fitSurface, heightAt, termsAt } from './surface.ts';

/** Where the garment lies in a picture, and what the ground round it tells of the light. */
export interface GroundCut {
  /** 1 where the garment is, 0 where the ground is. */
  readonly garment: Uint8Array;
  /** The ground's linear light at every pixel, as if nothing lay on it; undefined when no plain ground was found. */
  readonly light?: Planes;
}

/** Width of the frame that is taken for ground to start from, as a share of the shorter side. */
const FRAME = 0.04;
/** OKLab distance from the fitted ground within which a pixel is ground, at the least. A just noticeable step is about 0.02. */
const GROUND_DISTANCE = 0.04;
/** The garment's contact shade on the ground: at most this much darker… */
const SHADE_DEPTH = 0.18;
/** …of nearly the ground's own hue… */
const SHADE_CHROMA = 0.025;
/** …and setting in gently, while the edge of a garment is a jump. OKLab a pixel of the smoothed picture. */
const SHADE_STEP = 0.012;
/** Pixels of opacity below this are ground that was cut out already. */
const OPAQUE = 128;
/** Less garment than this share of the picture means that the ground was not told from it. */
const LEAST_GARMENT = 0.01;
/** Rounds of fitting the ground and dropping what is not ground (a garment that runs out of the frame). */
const ROUNDS = 4;

/** The pixels of the frame. */
export const frameOf = (width: number, height: number): number[] => {
  const depth = Math.max(1, Math.round(Math.min(width, height) * FRAME));
  return Array.from({ length: width * height }, (_, pixel) => pixel).filter((pixel) => {
    const x = pixel % width;
    const y = Math.floor(pixel / width);
    return x < depth || y < depth || x >= width - depth || y >= height - depth;
  });
};

const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1] ?? 0;

const fitPlanes = (planes: Planes, pixels: readonly number[], width: number, height: number): Planes => {
  const surfaces = [planes.one, planes.two, planes.three].map((plane) => fitSurface(plane, pixels, width, height));
  const fitted = {
    one: new Float64Array(width * height),
    two: new Float64Array(width * height),
    three: new Float64Array(width * height),
  };
  const [one = [], two = [], three = []] = surfaces;
  for (let pixel = 0; pixel < width * height; pixel += 1) {
    const terms = termsAt(pixel, width, height);
    fitted.one[pixel] = heightAt(one, terms);
    fitted.two[pixel] = heightAt(two, terms);
    fitted.three[pixel] = heightAt(three, terms);
  }
  return fitted;
};

/** The frame's pixels that belong to its commonest colour: the median colour and what lies near it. */
const groundOfFrame = (lab: Planes, frame: readonly number[], width: number, height: number): number[] => {
  const middle: Planes = {
    one: Float64Array.of(median(frame.map((pixel) => lab.one[pixel] ?? 0))),
    two: Float64Array.of(median(frame.map((pixel) => lab.two[pixel] ?? 0))),
    three: Float64Array.of(median(frame.map((pixel) => lab.three[pixel] ?? 0))),
  };
  // uneven light spreads the ground mostly in lightness, so the first net is cast wide
  let kept = frame.filter((pixel) => pixelDistance(lab, pixel, middle, 0) < 4 * GROUND_DISTANCE);
  for (let round = 0; round < ROUNDS && kept.length > 0; round += 1) {
    const fitted = fitPlanes(lab, kept, width, height);
    kept = frame.filter((pixel) => pixelDistance(lab, pixel, fitted, pixel) < 2 * GROUND_DISTANCE);
  }
  return kept;
};

/** Spreads from the frame inwards over everything that looks like the ground or like the garment's shade on it. */
const spread = (
  lab: Planes,
  fitted: Planes,
  start: readonly number[],
  reach: number,
  width: number,
  height: number,
): Uint8Array => {
  const ground = new Uint8Array(width * height);
  const queue = start.filter((pixel) => pixelDistance(lab, pixel, fitted, pixel) < reach);
  for (const pixel of queue) ground[pixel] = 1;
  for (let next = 0; next < queue.length; next += 1) {
    const from = queue[next] ?? 0;
    for (const pixel of neighboursOf(from, width, height)) {
      if (ground[pixel] === 1) continue;
      const near = pixelDistance(lab, pixel, fitted, pixel) < reach;
      if (near || isShade(lab, fitted, pixel, from)) {
        ground[pixel] = 1;
        queue.push(pixel);
      }
    }
  }
  return ground;
};

const isShade = (lab: Planes, fitted: Planes, pixel: number, from: number): boolean => {
  const darker = (fitted.one[pixel] ?? 0) - (lab.one[pixel] ?? 0);
  const tint = Math.hypot(
    (fitted.two[pixel] ?? 0) - (lab.two[pixel] ?? 0),
    (fitted.three[pixel] ?? 0) - (lab.three[pixel] ?? 0),
  );
  return darker > 0 && darker < SHADE_DEPTH && tint < SHADE_CHROMA && pixelDistance(lab, pixel, lab, from) < SHADE_STEP;
};

/** Drops the outermost pixels, which mix garment and ground. */
const shrunk = (garment: Uint8Array, width: number, height: number): Uint8Array =>
  garment.map((inside, pixel) =>
    inside === 1 && neighboursOf(pixel, width, height).every((other) => garment[other] === 1) ? 1 : 0,
  );

const count = (mask: Uint8Array): number => mask.reduce((sum, inside) => sum + inside, 0);

/**
 * Tells a garment from the plain ground it lies on. The ground is what the frame mostly shows; it may be unevenly lit,
 * shaded by the garment, or already cut out (transparent). Where garment and ground cannot be told apart, the whole
 * picture is garment. Colours are read inside the edge, where nothing is mixed; a cut goes to the edge.
 */
export const cutGround = (
  pixels: Pixels,
  light: Planes,
  edge: 'inside the edge' | 'to the edge' = 'inside the edge',
): GroundCut => {
  const { width, height, rgba } = pixels;
  const whole = new Uint8Array(width * height).fill(1);
  const edged = (mask: Uint8Array): Uint8Array =>
    edge === 'to the edge' ? shrunk(mask, width, height) : trimmed(mask, width, height);
  const opaque = whole.map((_, pixel) => ((rgba[pixel * 4 + 3] ?? 255) >= OPAQUE ? 1 : 0));
  if (count(opaque) < width * height * 0.98) return { garment: edged(opaque) };
  const lab = smoothed(oklabPlanes(light), width, height);
  const frame = frameOf(width, height);
  const kept = groundOfFrame(lab, frame, width, height);
  if (kept.length < frame.length / 4) return { garment: whole };
  const fitted = fitPlanes(lab, kept, width, height);
  const stray = median(kept.map((pixel) => pixelDistance(lab, pixel, fitted, pixel)));
  const ground = spread(lab, fitted, frame, Math.max(GROUND_DISTANCE, 3 * stray), width, height);
  const garment = ground.map((inside) => 1 - inside);
  if (count(garment) < width * height * LEAST_GARMENT) return { garment: whole };
  return { garment: edged(garment), light: fitPlanes(light, kept, width, height) };
};

/** Twice shrunk where enough is left, else as it was. */
const trimmed = (garment: Uint8Array, width: number, height: number): Uint8Array => {
  const inner = shrunk(shrunk(garment, width, height), width, height);
  return count(inner) > count(garment) / 3 ? inner : garment;
};
