export { type BookletChoice, bookletPdf } from './booklet/booklet.ts';
export { type CardSheetChoice, cardSheetPdf } from './cards/card-sheet.ts';
export { dayPlanPdf } from './days/day-plan.ts';
export type { PaperChoice, Printed, PrintSources } from './job.ts';
export { packingListPdf } from './packing/packing-list.ts';
export type { Orientation, PaperName } from './paper.ts';
export { wearTablePdf } from './wear/wear-table.ts';
