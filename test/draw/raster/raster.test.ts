import { PNG } from 'pngjs';
import sharp, { type Sharp } from 'sharp';
import { describe, expect, it } from 'vitest';
import { random } from '../../../lib/draw/kit/index.ts';
import { softLight } from '../../../lib/draw/raster/grain.ts';
import {
  createRasteriser,
  lookPicture,
  type Pixels,
  pictureSvg,
  piecePicture,
} from '../../../lib/draw/raster/index.ts';
import { limitTo } from '../../../lib/draw/raster/limit.ts';
import { paperDoll, randomLook } from '../flat-lay/paper-dolls.ts';

const rasteriser = createRasteriser();
const look = randomLook(random(21), 'picture');
const alphaAt = ({ data, width }: Pixels, x: number, y: number): number => data[(y * width + x) * 4 + 3] ?? 0;

/** A sheet of flat pale patches: where a palette goes wrong, it shows here first. */
const patches = `<svg xmlns="http://www.w3.org/2000/svg" width="1080" height="1350"><rect width="1080" height="1350" fill="#f2eadc"/>${[
  '#c9dff2',
  '#f4f2ee',
  '#e8cfc9',
  '#d8e2c8',
  '#26324d',
  '#7d2430',
  '#b4854f',
  '#2c5745',
  '#e9e2d0',
]
  .map(
    (colour, index) =>
      `<rect x="${90 + (index % 3) * 310}" y="${90 + Math.floor(index / 3) * 400}" width="280" height="360" fill="${colour}"/>`,
  )
  .join('')}</svg>`;

describe('raster', () => {
  it('blends grain by soft-light as the W3C recommendation defines it', () => {
    // Compositing and Blending Level 1, section 10.1.9, worked by hand
    expect(softLight(0.5, 0.25)).toBeCloseTo(0.5 - 0.5 * 0.5 * 0.5, 12);
    expect(softLight(0.2, 0.75)).toBeCloseTo(0.2 + 0.5 * (((16 * 0.2 - 12) * 0.2 + 4) * 0.2 - 0.2), 12);
    expect(softLight(0.64, 1)).toBeCloseTo(0.8, 12);
    for (const value of [0, 0.3, 0.7, 1]) expect(softLight(value, 0.5)).toBeCloseTo(value, 12);
  });

  it('keeps colours: grain moves the mean of a patch by less than 3 of 255', async () => {
    const plain = await rasteriser.pixels(patches, { grain: false });
    const grained = await rasteriser.pixels(patches);
    const means = async ({ data, width, height }: Pixels) =>
      // `stats` reads the picture as it came: what is cut out of it must be written first
      sharp(
        await sharp(data, { raw: { width, height, channels: 4 } })
          .extract({ left: 100, top: 100, width: 260, height: 340 })
          .png()
          .toBuffer(),
      ).stats();
    const [before, after] = [await means(plain), await means(grained)];
    for (const [channel, { mean }] of before.channels.entries()) {
      expect(Math.abs(mean - (after.channels[channel]?.mean ?? 0))).toBeLessThan(3);
    }
    expect(after.channels[0]?.stdev).toBeGreaterThan(1);
  });

  it('writes a PNG without stains: no spot of it strays from the picture', async () => {
    const pixels = await rasteriser.pixels(patches);
    const file = await rasteriser.png(pixels);
    expect(file.length).toBeLessThan(700_000);
    const spots = async (picture: Sharp) =>
      picture.removeAlpha().resize(135, 169, { kernel: 'linear' }).blur(1).raw().toBuffer();
    const wanted = await spots(sharp(pixels.data, { raw: { width: 1080, height: 1350, channels: 4 } }));
    const written = await spots(sharp(file));
    let worst = 0;
    wanted.forEach((value, index) => {
      worst = Math.max(worst, Math.abs(value - (written[index] ?? 0)));
    });
    expect(worst).toBeLessThanOrEqual(6);
  });

  it('keeps the colour of a few small things beside a sheet of pale cloth, in at most 256 colours', async () => {
    const gold = '#c39a4e';
    const small = patches.replace(
      '</svg>',
      `<circle cx="60" cy="60" r="7" fill="${gold}"/><circle cx="1040" cy="60" r="7" fill="#3a7bd5"/></svg>`,
    );
    const pixels = await rasteriser.pixels(small);
    // a decoder that is not ours
    const { data } = PNG.sync.read(await rasteriser.png(pixels));
    const colours = new Set<number>();
    let squares = 0;
    for (let at = 0; at < data.length; at += 4) {
      colours.add(data.readUInt32BE(at));
      for (const channel of [0, 1, 2]) squares += ((data[at + channel] ?? 0) - (pixels.data[at + channel] ?? 0)) ** 2;
    }
    expect(colours.size).toBeLessThanOrEqual(256);
    expect(Math.sqrt(squares / (data.length * 0.75))).toBeLessThan(1.6);
    for (const [x, y] of [
      [60, 60],
      [1040, 60],
    ] as const) {
      const at = (y * 1080 + x) * 4;
      for (const channel of [0, 1, 2])
        expect(Math.abs((data[at + channel] ?? 0) - (pixels.data[at + channel] ?? 0))).toBeLessThan(14);
    }
  });

  it('makes pictures of a look on clear ground, at several widths, also for dark pages', async () => {
    for (const ground of ['clear', 'night'] as const) {
      const laid = lookPicture(look, { width: 800, height: 1000 });
      const widest = await rasteriser.laid(laid, { ground });
      for (const width of [800, 400, 160]) {
        const pixels =
          width === 160
            ? await rasteriser.laid(laid, { ground, zoom: 0.2 })
            : width < 800
              ? await rasteriser.narrower(widest, width)
              : widest;
        expect([pixels.width, pixels.height]).toEqual([width, (width * 5) / 4]);
        expect(alphaAt(pixels, 0, 0)).toBe(0);
        const file = await rasteriser.webp(pixels);
        const back = await sharp(file).metadata();
        expect([back.format, back.width, back.hasAlpha]).toEqual(['webp', width, true]);
      }
    }
    const laid = lookPicture(look, { width: 400, height: 500 });
    const paper = await rasteriser.pixels(pictureSvg(laid, 'paper'));
    expect(alphaAt(paper, 0, 0)).toBe(255);
  });

  it('lays dark cloth in a pool of light on a dark page, without an outline', async () => {
    const shoes = { id: 'shoes', slot: 'shoes' as const, picture: { ...paperDoll('shoes', random(1)) } };
    const cloth = '#1d1a19';
    const dark = {
      ...shoes,
      picture: { ...shoes.picture, marks: shoes.picture.marks.map((mark) => ({ ...mark, fill: cloth })) },
    };
    const laid = lookPicture([dark], { width: 480, height: 560 });
    const { data, width, height } = await rasteriser.laid(laid, { ground: 'night' });
    // page colour of the night edition
    const page = await sharp(data, { raw: { width, height, channels: 4 } })
      .flatten({ background: '#24211f' })
      .raw()
      .toBuffer();
    const extent = laid.lay.placed[0]?.extent ?? { x: 0, y: 0, width: 0, height: 0 };
    const middle = Math.round(extent.y + extent.height / 2);
    /** Mean of the red of some rows, at so many pixels left of the cloth; smoothed over the grain. */
    const lightAt = (left: number): number => {
      const x = Math.round(extent.x - left);
      let sum = 0;
      for (let row = -6; row <= 6; row++)
        for (const by of [-1, 0, 1]) sum += page[((middle + row) * width + x + by) * 3] ?? 0;
      return sum / 39;
    };
    const seam = 4;
    const beside = lightAt(seam);
    // relative luminance as WCAG 2.2 defines it: cloth and table part by a good quarter
    const luminance = (value: number): number => ((value / 255 + 0.055) / 1.055) ** 2.4;
    expect((luminance(beside) + 0.05) / (luminance(0x1d) + 0.05)).toBeGreaterThan(1.25);
    // light that falls off slowly is a pool; an outline is gone within a few pixels
    expect(lightAt(14)).toBeGreaterThan(beside * 0.8);
    expect(page.reduce((most, value) => Math.max(most, value), 0)).toBeLessThan(150);
    for (const corner of [0, width - 1, (height - 1) * width, height * width - 1]) expect(data[corner * 4 + 3]).toBe(0);
  });

  it('keeps the light of a piece shown alone within its picture, fading to nothing at the border', async () => {
    const shoes = { id: 'shoes', slot: 'shoes' as const, picture: paperDoll('shoes', random(1)) };
    for (const wide of [64, 160, 480]) {
      const { data, width, height } = await rasteriser.laid(piecePicture(shoes, { width: wide }), { ground: 'night' });
      const alpha = (x: number, y: number): number => data[(y * width + x) * 4 + 3] ?? 0;
      // shade falls down and to the right; light alone reaches up
      const border = Array.from({ length: width }, (_, x) => alpha(x, 0));
      expect(Math.max(...border), `${wide} px`).toBeLessThan(16);
      const middle = Array.from({ length: width }, (_, x) => alpha(x, Math.round(height / 2)));
      const light = middle.filter((value) => value > 10 && value < 120);
      expect(light.length, `${wide} px`).toBeGreaterThan(1);
    }
  });

  it('draws two pieces at one scale when asked to', () => {
    const size = (width: number) => {
      const picture = { ...paperDoll('bag', random(1)), box: { x: 0, y: 0, width, height: width } };
      const item = { id: 'bag', slot: 'bag' as const, picture };
      return piecePicture(item, { width: 300, height: 300, pxPerCm: 4 }).lay.placed[0]?.extent.width;
    };
    expect(size(20)).toBe(80);
    expect(size(60)).toBe(240);
  });

  it('paints from shared sprites what the whole drawing painted at once shows', async () => {
    const laid = lookPicture(look, { width: 640, height: 800 });
    const [whole, parts] = await Promise.all([
      rasteriser.pixels(pictureSvg(laid, 'paper'), { grain: false }),
      rasteriser.laid(laid, {
        ground: 'paper',
        sheet:
          '<svg xmlns="http://www.w3.org/2000/svg" width="640" height="800"><rect width="640" height="800" fill="#f2eadc"/></svg>',
      }),
    ]);
    const means = ({ data, width, height }: Pixels) =>
      sharp(data, { raw: { width, height, channels: 4 } })
        .removeAlpha()
        .resize(64, 80, { kernel: 'cubic' })
        .raw()
        .toBuffer();
    const [one, other] = [await means(whole), await means(parts)];
    const apart = [...one].map((value, index) => Math.abs(value - (other[index] ?? 0)));
    // shade is softer in pixels than in paths; nothing is moved or missing
    expect(apart.reduce((sum, value) => sum + value, 0) / apart.length).toBeLessThan(3);
    expect(Math.max(...apart)).toBeLessThan(70);
  });

  it('gives the same pixels whichever picture needed a piece first', async () => {
    const [first, second] = [640, 520].map((width) => lookPicture(look, { width, height: 800 }));
    if (first === undefined || second === undefined) throw new Error('two pictures');
    const fresh = createRasteriser();
    await fresh.laid(second, { ground: 'night' });
    const again = await fresh.laid(first, { ground: 'clear' });
    expect(
      Buffer.from(again.data).equals(Buffer.from((await createRasteriser().laid(first, { ground: 'clear' })).data)),
    ).toBe(true);
  });

  it('gives straight colours where a picture is half transparent', async () => {
    const svg =
      '<svg xmlns="http://www.w3.org/2000/svg" width="4" height="4"><rect width="4" height="4" fill="#c86432" fill-opacity=".5"/></svg>';
    const { data } = await rasteriser.pixels(svg, { grain: false });
    expect(Math.abs((data[0] ?? 0) - 0xc8)).toBeLessThan(3);
    expect(Math.abs((data[1] ?? 0) - 0x64)).toBeLessThan(3);
    expect(data[3]).toBeGreaterThan(125);
  });

  it('runs no more tasks at a time than it may, and goes on after one fails', async () => {
    const limited = limitTo(3);
    let [running, most] = [0, 0];
    const task = (fails: boolean) => async () => {
      running++;
      most = Math.max(most, running);
      await new Promise((resolve) => setTimeout(resolve, 3));
      running--;
      if (fails) throw new Error('spoilt');
      return running;
    };
    const results = await Promise.allSettled(Array.from({ length: 12 }, (_, index) => limited(task(index % 4 === 0))));
    expect(most).toBe(3);
    expect(results.filter(({ status }) => status === 'rejected').length).toBe(3);
  });
});
