import { createHash, randomUUID } from 'node:crypto';
import { mkdir, readFile, rename, utimes, writeFile } from 'node:fs/promises';
import path from 'node:path';

/** Keeps what was made, by the hash of everything it was made from. */
export interface Cache {
  /** The kept bytes for a key, or what `make` gives, which is then kept. */
  get(key: string, make: () => Promise<Uint8Array>): Promise<Uint8Array>;
}

/** JSON with sorted keys and exact integers, so that equal data gives equal text. */
export const stableText = (value: unknown): string =>
  JSON.stringify(value, (_key, inner: unknown) => {
    if (typeof inner === 'bigint') return `${inner}n`;
    if (inner instanceof Map) return [...inner];
    if (inner instanceof Uint8Array) return createHash('sha256').update(inner).digest('hex');
    if (inner !== null && typeof inner === 'object' && !Array.isArray(inner)) {
      return Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1)));
    }
    return inner;
  });

/** Hash of data that names what is made from it. */
export const keyOf = (...parts: readonly unknown[]): string =>
  createHash('sha256').update(stableText(parts)).digest('hex').slice(0, 40);

/** A cache in a folder; a file is written beside and renamed, so a killed build leaves no half file. */
export const folderCache = (folder: string): Cache => {
  let ready: Promise<unknown> | undefined;
  return {
    async get(key, make) {
      const file = path.join(folder, key.slice(0, 2), key.slice(2));
      try {
        const kept = await readFile(file);
        const now = new Date();
        await utimes(file, now, now).catch(() => undefined);
        return kept;
      } catch {
        ready ??= mkdir(folder, { recursive: true });
        await ready;
      }
      const made = await make();
      await mkdir(path.dirname(file), { recursive: true });
      const beside = `${file}.${randomUUID()}`;
      await writeFile(beside, made);
      await rename(beside, file);
      return made;
    },
  };
};

/** No cache: everything is made anew. */
export const noCache: Cache = { get: (_key, make) => make() };
