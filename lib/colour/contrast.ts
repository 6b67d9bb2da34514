import { wcagContrast } from 'culori';

/** Contrast of two hex colours by WCAG 2.2, 1 to 21. */
export const contrastOf = (a: string, b: string): number => wcagContrast(a, b);

/** Least contrast of running text, WCAG 2.2 success criterion 1.4.3 (AA). */
export const TEXT_CONTRAST = 4.5;
