/** What the first bytes of a file say it is, whatever its name. */
export type PictureKind = 'jpeg' | 'png' | 'webp' | 'avif' | 'heic' | 'gif' | 'tiff' | 'svg' | 'unknown';

/** Bytes that are enough to tell. */
export const SIGNATURE_BYTES = 512;

const ascii = (bytes: Uint8Array, from: number, to: number): string => String.fromCharCode(...bytes.subarray(from, to));

const AVIF_BRANDS: ReadonlySet<string> = new Set(['avif', 'avis']);
const HEIC_BRANDS: ReadonlySet<string> = new Set(['heic', 'heix', 'hevc', 'hevx', 'heim', 'heis', 'mif1', 'msf1']);

/** Tells a picture by its signature: those of the JPEG, PNG, WebP, GIF, TIFF and ISO 14496-12 (`ftyp`) formats. */
export const pictureKind = (bytes: Uint8Array): PictureKind => {
  if (bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff) return 'jpeg';
  if (bytes[0] === 0x89 && ascii(bytes, 1, 8) === 'PNG\r\n\x1a\n') return 'png';
  if (ascii(bytes, 0, 4) === 'RIFF' && ascii(bytes, 8, 12) === 'WEBP') return 'webp';
  if (ascii(bytes, 4, 8) === 'ftyp') return isoBrand(bytes);
  if (/^GIF8[79]a/.test(ascii(bytes, 0, 6))) return 'gif';
  if (/^(II\*\0|MM\0\*)/.test(ascii(bytes, 0, 4))) return 'tiff';
  return /<(\?xml|!doctype svg|svg)[\s>]/i.test(ascii(bytes, 0, bytes.length)) ? 'svg' : 'unknown';
};

const isoBrand = (bytes: Uint8Array): PictureKind => {
  const boxLength = ((bytes[0] ?? 0) << 24) | ((bytes[1] ?? 0) << 16) | ((bytes[2] ?? 0) << 8) | (bytes[3] ?? 0);
  const end = Math.min(boxLength, bytes.length);
  const brands: string[] = [ascii(bytes, 8, 12)];
  for (let at = 16; at + 4 <= end; at += 4) brands.push(ascii(bytes, at, at + 4));
  if (brands.some((brand) => AVIF_BRANDS.has(brand))) return 'avif';
  return brands.some((brand) => HEIC_BRANDS.has(brand)) ? 'heic' : 'unknown';
};
