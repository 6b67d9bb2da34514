/** The stylist's own settings, from `studio.md`. */
export interface Studio {
  readonly name: string;
  /** One line under the name: what the studio does. */
  readonly line: string;
  readonly language: 'en-GB' | 'en-US' | 'de' | (string & {});
  readonly temperature: 'C' | 'F';
  readonly length: 'cm' | 'in';
  readonly weight: 'kg' | 'lb';
  readonly paper: 'A4' | 'Letter';
  /** Page colours, light; undefined keeps the house's own. */
  readonly paperColour?: string;
  readonly inkColour?: string;
  /** Looks shown in a lookbook. */
  readonly looksShown: number;
  /** Address the site will be published at, for link previews; undefined while unknown. */
  readonly address?: string;
  readonly note: string;
}
