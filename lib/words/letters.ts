/** With its first letter large, as a sentence or a heading begins. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** With its first letter small, as a name stands within a sentence. */
export const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** A sentence within another: without its full stop. */
export const clause = (sentence: string): string => sentence.replace(/\.$/u, '');
