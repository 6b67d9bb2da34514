import { modeLab65, modeLch65, modeRgb, useMode } from 'culori/fn';

/** Only the spaces that judging colours needs, so that a page of the site carries no others. */
useMode(modeRgb);
/** CIELAB under D65, of a hex colour. */
export const toLab = useMode(modeLab65);
/** The same in cylinder coordinates. */
export const toLch = useMode(modeLch65);
