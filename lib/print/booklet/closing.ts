import { cautionsOfTrip, isMark, ofOccasion, strongestCautions } from '../../comfort/index.ts';
import type { Job } from '../job.ts';
import type { Size } from '../paper.ts';
import { type Block, drawn, row, type SharedTag, tagged } from '../set/block.ts';
import type { FlowItem } from '../set/flow.ts';
import { text } from '../set/text.ts';
import { type BookPage, bookArea, flowingPart, partHead } from './pages.ts';

const RULE_STEP = 8.4;
/** Lines to write on, at least; more where the page has room. */
const LEAST_LINES = 4;

/** Lines to write on. */
const ruledLines = (job: Job, height: number): Block =>
  drawn(height, (surface, { x, y, width }) =>
    surface.artifact(() => {
      for (let at = RULE_STEP; at <= height; at += RULE_STEP) {
        surface.line(x, y + at, x + width, y + at, { colour: job.inks.hair, width: 0.3 });
      }
    }),
  );

/** A page to write on, where folding leaves one over. */
export const notesPage = (job: Job, size: Size): BookPage => ({
  paint: (surface, page) => {
    const area = bookArea(size, page);
    const head = partHead(job, job.say('notes'));
    const taken = head.height(area.width);
    head.paint(surface, area);
    ruledLines(job, area.height - taken).paint(surface, { ...area, y: area.y + taken, height: area.height - taken });
  },
});

/** Cautions of the brief and the plan, each kind once by its strongest, and the usual deferral. */
export const cautionsPart = (job: Job, size: Size): readonly BookPage[] => {
  const { guide, types } = job;
  const { setter } = job.press;
  // what one look leaves bare, and the index of a day, is said beside the day
  const ofTheTrip = guide.plan.days
    .flatMap(({ occasions }) => occasions.flatMap(({ cautions }) => ofOccasion(cautions)))
    .filter((caution) => !isMark(caution) && caution.values.parts === undefined && caution.values.index === undefined);
  const said = [
    ...guide.brief.cautions,
    ...[...cautionsOfTrip(guide.plan.days), ...strongestCautions(ofTheTrip)].map(job.sayPhrase),
    ...guide.packing.notes.map(job.sayPhrase),
  ];
  const rows = [...new Set(said)].map((caution) =>
    tagged(
      'LI',
      row([
        { width: 4, block: tagged('Lbl', text(setter, '–', types.text)) },
        { width: { share: 1 }, block: tagged('LBody', text(setter, caution, types.text)) },
      ]),
    ),
  );
  const shared: SharedTag = {};
  const list: FlowItem[] = rows.map((block) => ({ block: tagged('L', block, {}, shared), above: 2 }));
  return flowingPart(
    job,
    size,
    job.say('cautions'),
    [
      ...list,
      { block: tagged('P', text(setter, job.say('cautions closing'), types.key)), above: 5 },
      { block: tagged('H3', text(setter, job.say('own notes'), types.panel)), above: 9, withNext: true },
      { block: ruledLines(job, LEAST_LINES * RULE_STEP) },
    ],
    { tail: (height) => ruledLines(job, height) },
  );
};
