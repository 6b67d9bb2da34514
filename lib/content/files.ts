import { readdir, readFile, realpath, stat } from 'node:fs/promises';
import path from 'node:path';
import type { Problem } from '../model/index.ts';

/** One Markdown file of the content folder, decoded. */
export interface ContentFile {
  /** Below the content folder, with `/`. */
  readonly path: string;
  readonly text: string;
}

export interface FoundFiles {
  readonly files: readonly ContentFile[];
  readonly problems: readonly Problem[];
}

/** A garment note has a few lines; a megabyte is a mistake. */
const LARGEST_TEXT_BYTES = 1024 * 1024;
const PICTURES = new Set(['.jpg', '.jpeg', '.png', '.webp', '.heic', '.avif']);
const TEXTS = new Set(['.md', '.csv']);

/** Real path of `file` when it lies inside `root` (both sides resolved), else undefined. */
export const insideFolder = async (root: string, file: string): Promise<string | undefined> => {
  const [realRoot, realFile] = await Promise.all([realpath(root), realpath(path.resolve(root, file))]);
  const relative = path.relative(realRoot, realFile);
  return relative.startsWith('..') || path.isAbsolute(relative) ? undefined : realFile;
};

const decode = (bytes: Uint8Array): string | undefined => {
  if (bytes.includes(0)) return undefined;
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes).replaceAll('\r\n', '\n');
  } catch {
    return undefined;
  }
};

const readOne = async (root: string, file: string): Promise<ContentFile | Problem | undefined> => {
  const extension = path.extname(file).toLowerCase();
  if (PICTURES.has(extension)) return undefined;
  if (!TEXTS.has(extension)) {
    return {
      file,
      wrong: 'Wayfold does not read this kind of file',
      mend: 'give a text file the ending .md, or move this one out of the content folder',
    };
  }
  const real = await insideFolder(root, file);
  if (real === undefined) {
    return {
      file,
      wrong: 'this is a link that leads out of the content folder',
      mend: 'copy the file into the content folder',
    };
  }
  const { size } = await stat(real);
  if (size > LARGEST_TEXT_BYTES) {
    return {
      file,
      wrong: `the file is ${Math.round(size / 1024)} kB, too large for a note`,
      mend: 'keep a file under 1024 kB; put pictures beside it as .jpg or .png',
    };
  }
  const text = decode(await readFile(real));
  if (text === undefined) {
    return {
      file,
      wrong: 'the file is not plain text in UTF-8',
      mend: 'save it as UTF-8 text ("Unicode" in some editors)',
    };
  }
  return { path: file, text };
};

const walk = async (root: string, below: string): Promise<string[]> => {
  const entries = await readdir(path.join(root, below), { withFileTypes: true });
  const found: string[] = [];
  for (const entry of entries) {
    if (entry.name.startsWith('.')) continue;
    const relative = below === '' ? entry.name : `${below}/${entry.name}`;
    const isFolder = entry.isSymbolicLink()
      ? (await stat(path.join(root, relative)).catch(() => undefined))?.isDirectory()
      : entry.isDirectory();
    if (isFolder && entry.isSymbolicLink()) found.push(`${relative}/`);
    else if (isFolder) found.push(...(await walk(root, relative)));
    else found.push(relative);
  }
  return found;
};

const AT_ONCE = 64;

/** Reads every text file of a content folder, in a fixed order. Never writes. A file that cannot be used is a problem. */
export const readContentFiles = async (root: string): Promise<FoundFiles> => {
  const there = await stat(root).catch(() => undefined);
  if (!there?.isDirectory()) {
    return {
      files: [],
      problems: [{ file: root, wrong: 'there is no such folder', mend: 'name the content folder with --content' }],
    };
  }
  const paths = (await walk(root, '')).sort((a, b) => (a < b ? -1 : 1));
  const files: ContentFile[] = [];
  const problems: Problem[] = [];
  for (let start = 0; start < paths.length; start += AT_ONCE) {
    const batch = await Promise.all(
      paths.slice(start, start + AT_ONCE).map(async (file) => {
        if (file.endsWith('/')) {
          return { file, wrong: 'this folder is a link', mend: 'put the folder itself into the content folder' };
        }
        return readOne(root, file).catch(() => ({
          file,
          wrong: 'the file cannot be read',
          mend: 'check that it is still there and that you may open it',
        }));
      }),
    );
    for (const result of batch) {
      if (result === undefined) continue;
      if ('text' in result) files.push(result);
      else problems.push(result);
    }
  }
  return { files, problems };
};
