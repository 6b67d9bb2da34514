import type { Piece, Problem } from '../model/index.ts';
import { checkPhoto } from '../photo/index.ts';
import type { ContentFile } from './files.ts';
import { readFrontMatter } from './front-matter.ts';

const lineOfPhoto = (file: ContentFile | undefined): number | undefined => {
  const front = file === undefined ? undefined : readFrontMatter(file);
  return front?.ok ? front.matter.lineOf(['photo']) : undefined;
};

/**
 * Photos that are missing, broken, too large, no photos at all or outside the folder, at the line that names them. A photo
 * on a busy ground is no problem of the content. One photo at a time is decoded, and small.
 */
export const photoProblems = async (
  root: string,
  pieces: readonly Piece[],
  files: readonly ContentFile[],
): Promise<readonly Problem[]> => {
  const found: Problem[] = [];
  for (const { photo, file } of pieces) {
    const trouble = photo === undefined ? undefined : await checkPhoto(root, photo);
    if (trouble === undefined) continue;
    const line = lineOfPhoto(files.find(({ path }) => path === file));
    found.push({ file, ...(line === undefined ? {} : { line }), ...trouble });
  }
  return found;
};
