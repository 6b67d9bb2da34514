/** Why a photo cannot be used, in the manner of a content problem: what is wrong and how to mend it. */
export interface PhotoTrouble {
  readonly wrong: string;
  readonly mend: string;
}

/** Either what was asked for or the trouble with the photo. Bad photos are content, not bugs: nothing throws. */
export type PhotoResult<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly trouble: PhotoTrouble };

export const good = <T>(value: T): PhotoResult<T> => ({ ok: true, value });

export const bad = (wrong: string, mend: string): { readonly ok: false; readonly trouble: PhotoTrouble } => ({
  ok: false,
  trouble: { wrong, mend },
});
