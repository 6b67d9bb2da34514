import { realpath, stat } from 'node:fs/promises';
import path from 'node:path';
import { bad, good, type PhotoResult } from './trouble.ts';

/** Most bytes of a photo file. Camera files of 50 megapixels stay below. */
export const MOST_BYTES = 60 * 1024 * 1024;

const looksForeign = (name: string): boolean =>
  name === '' ||
  name.includes('\0') ||
  name.includes('\\') ||
  path.isAbsolute(name) ||
  /^[a-z][a-z0-9+.-]*:/i.test(name);

/**
 * The real path of a photo below the content folder. Both sides are resolved first, so neither `..` nor a link leads
 * out; absolute paths, addresses and backslashes are refused unread.
 */
export const photoInside = async (contentFolder: string, name: string): Promise<PhotoResult<string>> => {
  if (looksForeign(name)) {
    return bad(
      `the photo "${name}" is not a path below the content folder`,
      'write a path such as photos/overshirt.jpg',
    );
  }
  const outside = bad(`the photo "${name}" lies outside the content folder`, 'copy the photo into the content folder');
  const root = await realpath(contentFolder);
  const wanted = path.resolve(root, name);
  if (!isBelow(root, wanted)) return outside;
  let real: string;
  try {
    real = await realpath(wanted);
  } catch {
    return bad(`there is no photo "${name}"`, 'check the spelling, or take the line out');
  }
  if (!isBelow(root, real)) return outside;
  const found = await stat(real);
  if (!found.isFile()) return bad(`"${name}" is not a file`, 'name the photo itself');
  if (found.size > MOST_BYTES) {
    return bad(
      `the photo "${name}" is larger than 60 MB`,
      'export it smaller: 3000 pixels on the longer side is plenty',
    );
  }
  return good(real);
};

const isBelow = (root: string, file: string): boolean => {
  const relative = path.relative(root, file);
  return relative !== '' && relative.split(path.sep)[0] !== '..' && !path.isAbsolute(relative);
};
