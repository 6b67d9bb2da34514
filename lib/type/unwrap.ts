import { inflateSync } from 'node:zlib';

const WOFF_SIGNATURE = 0x774f4646;
const WOFF_HEADER = 44;
const WOFF_ENTRY = 20;
const SFNT_HEADER = 12;
const SFNT_ENTRY = 16;

const toFour = (length: number): number => (length + 3) & ~3;

/**
 * Turns a WOFF 1.0 file into the plain sfnt (TrueType or OpenType) inside it, which every font reader knows.
 * W3C Recommendation "WOFF File Format 1.0", sections 3 to 5. Throws on anything else, WOFF 2 included.
 */
export const unwrapWoff = (woff: Uint8Array): Uint8Array<ArrayBuffer> => {
  const source = new DataView(woff.buffer, woff.byteOffset, woff.byteLength);
  if (woff.byteLength < WOFF_HEADER || source.getUint32(0) !== WOFF_SIGNATURE) {
    throw new Error('not a WOFF 1.0 file: it must start with "wOFF"');
  }
  const count = source.getUint16(12);
  const entries = Array.from({ length: count }, (_, index) => {
    const at = WOFF_HEADER + index * WOFF_ENTRY;
    return {
      tag: source.getUint32(at),
      offset: source.getUint32(at + 4),
      packed: source.getUint32(at + 8),
      length: source.getUint32(at + 12),
      checksum: source.getUint32(at + 16),
    };
  }).sort((a, b) => a.tag - b.tag);
  const directory = SFNT_HEADER + count * SFNT_ENTRY;
  const size = entries.reduce((total, entry) => total + toFour(entry.length), directory);
  const sfnt = new Uint8Array(size);
  const target = new DataView(sfnt.buffer);
  const selector = Math.floor(Math.log2(count));
  const range = 2 ** selector * SFNT_ENTRY;
  target.setUint32(0, source.getUint32(4));
  target.setUint16(4, count);
  target.setUint16(6, range);
  target.setUint16(8, selector);
  target.setUint16(10, count * SFNT_ENTRY - range);
  let offset = directory;
  entries.forEach((entry, index) => {
    const at = SFNT_HEADER + index * SFNT_ENTRY;
    target.setUint32(at, entry.tag);
    target.setUint32(at + 4, entry.checksum);
    target.setUint32(at + 8, offset);
    target.setUint32(at + 12, entry.length);
    const packed = woff.subarray(entry.offset, entry.offset + entry.packed);
    const table = entry.packed < entry.length ? inflateSync(packed) : packed;
    if (table.length !== entry.length) {
      throw new Error(`WOFF table ${index} holds ${table.length} bytes instead of ${entry.length}`);
    }
    sfnt.set(table, offset);
    offset += toFour(entry.length);
  });
  return sfnt;
};
