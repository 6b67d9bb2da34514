import type { Area } from './paper.ts';
import type { DrawnForm } from './pdf/drawings.ts';
import type { Surface } from './pdf/surface.ts';

/** A long coat, centimetres: the size that fills a thumbnail. */
const LARGEST = 115;
/** How fast small things shrink: 1 would be one scale for all, 0 one size for all. */
const SHRINKING = 0.36;

/** Millimetres a centimetre at which a drawing sits well in a box: small things are drawn larger than to scale. */
const thumbnailScale = (form: Pick<DrawnForm, 'box'>, width: number, height: number): number => {
  const extent = Math.max(form.box.width, form.box.height);
  const wanted = height * Math.min(1, extent / LARGEST) ** SHRINKING;
  return Math.min(wanted / extent, width / form.box.width, height / form.box.height);
};

/** A drawing in the middle of a box, at thumbnail scale. */
export const paintThumbnail = (surface: Surface, form: DrawnForm, { x, y, width, height }: Area): void => {
  const scale = thumbnailScale(form, width, height);
  surface.drawing(form, x + (width - form.box.width * scale) / 2, y + (height - form.box.height * scale) / 2, scale);
};

/** An icon, which has no true size, as large as its box allows. */
export const paintIcon = (surface: Surface, form: DrawnForm, { x, y, width, height }: Area): void => {
  const scale = Math.min(width / form.box.width, height / form.box.height);
  surface.drawing(form, x + (width - form.box.width * scale) / 2, y + (height - form.box.height * scale) / 2, scale);
};
