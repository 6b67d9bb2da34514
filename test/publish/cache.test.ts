import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { folderCache, keyOf } from '../../lib/publish/cache.ts';
import { inPool } from '../../lib/publish/pool.ts';

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(path.join(tmpdir(), 'wayfold-cache-'));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

describe('the cache', () => {
  it('makes a thing once', async () => {
    let made = 0;
    const make = async (): Promise<Uint8Array> => {
      made += 1;
      return Uint8Array.from([1, 2, 3]);
    };
    const cache = folderCache(folder);
    expect([...(await cache.get('abcdef', make))]).toEqual([1, 2, 3]);
    expect([...(await folderCache(folder).get('abcdef', make))]).toEqual([1, 2, 3]);
    expect(made).toBe(1);
    expect(await readdir(path.join(folder, 'ab'))).toEqual(['cdef']);
  });

  it('keeps nothing of what failed', async () => {
    const cache = folderCache(folder);
    await expect(cache.get('ab1', () => Promise.reject(new Error('no ink')))).rejects.toThrow('no ink');
    expect([...(await cache.get('ab1', async () => Uint8Array.from([7])))]).toEqual([7]);
  });

  it('names equal data equally whatever the order of its fields, and different data differently', () => {
    expect(keyOf({ a: 1, b: 2n })).toBe(keyOf({ b: 2n, a: 1 }));
    expect(keyOf({ a: 1 })).not.toBe(keyOf({ a: 2 }));
    expect(keyOf(1n)).not.toBe(keyOf(1));
  });
});

describe('the pool', () => {
  it('keeps the order and never has more under way than it may', async () => {
    let busy = 0;
    let most = 0;
    const results = await inPool([5, 1, 4, 2, 3], 2, async (ms) => {
      busy += 1;
      most = Math.max(most, busy);
      await new Promise((resolve) => setTimeout(resolve, ms));
      busy -= 1;
      return ms * 10;
    });
    expect(results).toEqual([50, 10, 40, 20, 30]);
    expect(most).toBe(2);
  });
});
