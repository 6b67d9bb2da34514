import { capital } from '../letters.ts';
/** First letter upper case, and one full stop at the end, even after "3. Okt." */
export const sentence = (text: string): string => {
  const opened = capital(text);
  return /[.!?]$/u.test(opened) ? opened : `${opened}.`;
};

/** The German quotation marks: a name between them keeps its own case and gender. */
export const quoted = (name: string): string => `„${name}“`;

/** German counts most things in one of two forms; `#` becomes the number. */
export const forms = (one: string, other: string): { readonly one: string; readonly other: string } => ({
  one: `# ${one}`,
  other: `# ${other}`,
});

/** "# Teil" and "# Teile": the trade's word for a piece. */
export const PIECES = forms('Teil', 'Teile');
export const LOOKS = forms('Look', 'Looks');
export const OCCASIONS = forms('Anlass', 'Anlässe');
export const DAYS = forms('Tag', 'Tage');
