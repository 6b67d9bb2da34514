/** Exact integers have no place in JSON: they are kept as `{"exact": "1420"}`. */
const write = (_key: string, value: unknown): unknown => (typeof value === 'bigint' ? { exact: String(value) } : value);

const read = (_key: string, value: unknown): unknown =>
  value !== null && typeof value === 'object' && 'exact' in value && Object.keys(value).length === 1
    ? BigInt(String(value.exact))
    : value;

/** What was computed, as bytes to keep; everything in it is plain data. */
export const packed = (data: unknown): Uint8Array => new TextEncoder().encode(JSON.stringify(data, write));

/** The same again, equal to what was packed. */
export const unpacked = <T>(bytes: Uint8Array): T => JSON.parse(new TextDecoder().decode(bytes), read) as T;
