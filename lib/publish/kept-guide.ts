import type { Guide } from '../guide/index.ts';

/** Exact integers have no place in JSON: they are kept as `{"exact": "1420"}`. */
const write = (_key: string, value: unknown): unknown => (typeof value === 'bigint' ? { exact: String(value) } : value);

const read = (_key: string, value: unknown): unknown =>
  value !== null && typeof value === 'object' && 'exact' in value && Object.keys(value).length === 1
    ? BigInt(String(value.exact))
    : value;

/** A guide as bytes to keep; everything in it is plain data. */
export const packGuide = (guide: Guide): Uint8Array => new TextEncoder().encode(JSON.stringify(guide, write));

/** The guide again, equal to the one that was packed. */
export const unpackGuide = (bytes: Uint8Array): Guide => JSON.parse(new TextDecoder().decode(bytes), read) as Guide;
