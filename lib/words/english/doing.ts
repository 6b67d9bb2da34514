/** Activities that do not follow "while" or "for" as they are written. */
const WHILE: Readonly<Record<string, string>> = { 'brisk walking': 'walking briskly' };

/** An activity, to follow "while" or "for". */
export const doing = (activity: string): string => WHILE[activity] ?? activity;

/** The same where the place is already said. */
export const doingThere = (activity: string): string => doing(activity).replace(/ indoors$/u, '');
