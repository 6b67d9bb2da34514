import { execFile } from 'node:child_process';
import { mkdtemp, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { promisify } from 'node:util';
import { differenceCiede2000 } from 'culori';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { coloursOfPhoto, cutOutPhoto, openPhoto, publishPhoto } from '../../lib/photo/index.ts';
import { meanOf, readScenes } from './errors.ts';
import { photograph, SCENES } from './synthetic.ts';

const execute = promisify(execFile);

let outer = '';
let content = '';

beforeAll(async () => {
  outer = await mkdtemp(path.join(tmpdir(), 'photo-'));
  content = await mkdtemp(path.join(outer, 'content-'));
});
afterAll(async () => {
  await rm(outer, { recursive: true });
});

const put = async (name: string, bytes: Uint8Array | string): Promise<string> => {
  await writeFile(path.join(content, name), bytes);
  return name;
};

describe('colours of synthetic photos', () => {
  const difference = differenceCiede2000();

  test('known colours come back: mean CIEDE2000 under 5, shares within a tenth, no colour too many', async () => {
    const read = await readScenes(content);
    for (const { scene, found, colours } of read) {
      expect(found, scene.name).toBe(scene.cloth.length);
      for (const { error, knownShare, readShare } of colours) {
        expect(error, scene.name).toBeLessThan(5);
        expect(Math.abs(readShare - knownShare), scene.name).toBeLessThan(0.1);
      }
    }
    // what README.md says of them
    const errors = read.flatMap(({ colours }) => colours.map(({ error }) => error));
    expect(errors.length).toBeGreaterThanOrEqual(25);
    expect(meanOf(errors)).toBeLessThan(2);
  }, 180_000);

  test('the same photo gives the same answer', async () => {
    const [scene] = SCENES;
    if (scene === undefined) throw new Error('no scene');
    const name = await put('twice.jpeg', await photograph(scene, 9));
    expect(await coloursOfPhoto(content, name)).toEqual(await coloursOfPhoto(content, name));
  });

  test('a cut-out photo with a transparent ground is read too', async () => {
    const cut = await cutOutPhoto(content, '1.jpeg', 400);
    if (!cut.ok) throw new Error(cut.trouble.wrong);
    const read = await coloursOfPhoto(content, await put('cut.png', cut.value.png));
    expect(read).toMatchObject({ ok: true });
    if (read.ok) expect(difference(read.value.colours[0]?.hex ?? '', SCENES[0]?.cloth[0] ?? '')).toBeLessThan(5);
  });

  test('a picture without a garment cannot be cut out', async () => {
    const plain = await sharp({ create: { width: 200, height: 200, channels: 3, background: '#a4492a' } })
      .png()
      .toBuffer();
    expect(await cutOutPhoto(content, await put('plain.png', plain), 200)).toMatchObject({ ok: false });
    expect(await coloursOfPhoto(content, 'plain.png')).toMatchObject({
      ok: true,
      value: { colours: [{ hex: '#a4492a', share: 1 }] },
    });
  });
});

describe('published photos', () => {
  test.each(['webp', 'jpeg', 'png'] as const)('%s carries no metadata and stands upright', async (format) => {
    const scene = SCENES.find(({ orientation }) => orientation === 6);
    if (scene === undefined) throw new Error('no scene');
    const original = await photograph(scene, 3);
    const before = await sharp(original).metadata();
    // the check would be empty if the original had nothing to lose
    expect(before.exif).toBeDefined();
    expect(original.includes('secret-owner')).toBe(true);
    const made = await publishPhoto(content, await put('own.jpeg', original), { longerSide: 400, format });
    if (!made.ok) throw new Error(made.trouble.wrong);
    const after = await sharp(made.value.bytes).metadata();
    expect([after.exif, after.xmp, after.iptc, after.icc, after.orientation]).toEqual(Array.from({ length: 5 }));
    expect(Buffer.from(made.value.bytes).includes('secret-owner')).toBe(false);
    expect([made.value.width, made.value.height]).toEqual([320, 400]);
    const again = await publishPhoto(content, 'own.jpeg', { longerSide: 400, format });
    expect(again).toEqual(made);
  });
});

describe('bad input', () => {
  const wrong = async (name: string): Promise<string> => {
    const read = await coloursOfPhoto(content, name);
    return read.ok ? 'read' : read.trouble.wrong;
  };

  test('missing', async () => {
    expect(await wrong('none.jpg')).toContain('there is no photo');
  });

  test('damaged', async () => {
    const whole = await photograph(
      SCENES[0] ??
        (() => {
          throw new Error('no scene');
        })(),
      1,
    );
    expect(await wrong(await put('half.jpg', whole.subarray(0, whole.length / 2)))).toContain('damaged');
    expect(await wrong(await put('head.jpg', whole.subarray(0, 20)))).toContain('damaged');
    expect(await wrong(await put('empty.jpg', ''))).toContain('not a picture');
  });

  test('100 megapixels, refused by the header', async () => {
    const huge = await sharp({ create: { width: 10_000, height: 10_000, channels: 3, background: '#a4492a' } })
      .png({ compressionLevel: 9 })
      .toBuffer();
    await put('huge.png', huge);
    expect(await wrong('huge.png')).toContain('100 megapixels');
    expect(await publishPhoto(content, 'huge.png', { longerSide: 100, format: 'png' })).toMatchObject({ ok: false });
  });

  test('the largest photo that is read takes bounded memory, turned by the camera or not', async () => {
    const cloth = await sharp({ create: { width: 5000, height: 5000, channels: 3, background: '#a4492a' } })
      .png({ compressionLevel: 1 })
      .toBuffer();
    const large = await sharp({ create: { width: 9000, height: 7000, channels: 3, background: '#ddd8cc' } })
      .composite([{ input: cloth }])
      .withMetadata({ orientation: 6 })
      .jpeg({ quality: 80, progressive: true })
      .toBuffer();
    await put('large.jpg', large);
    const { stdout } = await execute(process.execPath, [
      '--import',
      'tsx',
      path.join(import.meta.dirname, 'memory.ts'),
      content,
      'large.jpg',
    ]);
    // 63 megapixels are 189 MB as RGB; decoded once, beside a program of about 110 MB, and never copied whole
    expect(Number(stdout)).toBeLessThan(600);
  }, 180_000);

  test('text named .jpg', async () => {
    expect(await wrong(await put('text.jpg', 'Dear diary'))).toContain('not a picture');
  });

  test.each([
    '<svg xmlns="http://www.w3.org/2000/svg"><script>1</script></svg>',
    '<?xml version="1.0"?>\n<!-- x --><svg/>',
    '\ufeff<SVG >',
  ])('SVG under any name: %s', async (text) => {
    expect(await wrong(await put('drawing.jpg', text))).toContain('SVG');
  });

  test('GIF and HEIC are named for what they are', async () => {
    expect(await wrong(await put('moving.jpg', 'GIF89a..........'))).toContain('GIF');
    const heic = Buffer.concat([Buffer.from([0, 0, 0, 24]), Buffer.from('ftypheic\0\0\0\0mif1heic')]);
    expect(await wrong(await put('phone.heic', heic))).toContain('HEIC');
  });

  test('paths that leave the content folder', async () => {
    await writeFile(
      path.join(outer, 'outside.png'),
      await sharp({ create: { width: 20, height: 20, channels: 3, background: '#fff' } })
        .png()
        .toBuffer(),
    );
    await symlink(path.join(outer, 'outside.png'), path.join(content, 'link.png'));
    await symlink(outer, path.join(content, 'folder'));
    for (const name of ['../outside.png', 'folder/outside.png', 'link.png', 'a/../../outside.png']) {
      expect(await wrong(name), name).toContain('outside the content folder');
    }
    for (const name of [
      path.join(outer, 'outside.png'),
      'file:///etc/passwd',
      'https://example.org/a.png',
      'a\\b.png',
      'a\0.png',
      '',
    ]) {
      expect(await wrong(name), name).toContain('not a path below');
    }
    expect(await wrong('.')).toMatch(/outside|not a file/);
  });

  test('too small', async () => {
    await put(
      'dot.png',
      await sharp({ create: { width: 2, height: 2, channels: 3, background: '#fff' } })
        .png()
        .toBuffer(),
    );
    expect(await wrong('dot.png')).toContain('2 × 2');
    expect(await openPhoto(content, 'dot.png')).toMatchObject({ ok: false });
  });
});
