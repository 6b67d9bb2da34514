import { promisify } from 'node:util';
import { deflate } from 'node:zlib';
import type { Indexed } from './palette.ts';

const deflated = promisify(deflate);

/** Fast: grain packs little better with more effort. A large chunk, so that zlib does not call back thirty times. */
const EFFORT = { level: 1, memLevel: 9, chunkSize: 1 << 20 } as const;

const SIGNATURE = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a);
const INDEXED_COLOUR = 3;

const CRC = Uint32Array.from({ length: 256 }, (_, byte) => {
  let value = byte;
  for (let bit = 0; bit < 8; bit++) value = value & 1 ? 0xedb88320 ^ (value >>> 1) : value >>> 1;
  return value;
});

const crcOf = (bytes: Uint8Array): number => {
  let value = 0xffffffff;
  for (const byte of bytes) value = (CRC[(value ^ byte) & 255] ?? 0) ^ (value >>> 8);
  return (value ^ 0xffffffff) >>> 0;
};

/** Length, type, data, and the check sum of type and data. */
const chunk = (type: string, data: Uint8Array): Buffer => {
  const bytes = Buffer.alloc(data.length + 12);
  bytes.writeUInt32BE(data.length, 0);
  bytes.write(type, 4, 'latin1');
  bytes.set(data, 8);
  bytes.writeUInt32BE(crcOf(bytes.subarray(4, data.length + 8)), data.length + 8);
  return bytes;
};

/** A PNG file (ISO/IEC 15948, sections 5 and 11) of a picture in at most 256 colours. */
export const pngOf = async ({ rows, colours }: Indexed, width: number, height: number): Promise<Buffer> => {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([8, INDEXED_COLOUR, 0, 0, 0], 8);
  return Buffer.concat([
    SIGNATURE,
    chunk('IHDR', header),
    chunk('PLTE', colours),
    chunk('IDAT', await deflated(rows, EFFORT)),
    chunk('IEND', new Uint8Array()),
  ]);
};
