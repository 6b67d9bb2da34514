import type { Bag, Brief, Finding, Piece, StockLine } from '../model/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import { millilitresOf } from './air.ts';
import { roomOf } from './assign.ts';
import { BAG_GUIDELINES, BATTERIES, LIQUIDS } from './guidelines.ts';
import { isFlight } from './journeys.ts';
import type { PackedTrip, PackQuestion } from './pack.ts';
import type { BagReport } from './report.ts';
import { goesIn, stiffBox } from './stiff.ts';

/** Extra grams from which another look for the journey is worth a word, and not more. Own choice. */
const WORTH_SAYING_GRAMS = 200;

type Make = (
  level: Finding['level'],
  rule: string,
  message: Phrase,
  mend: Phrase,
  about?: readonly string[],
) => Finding;

const makeFor =
  (file: string): Make =>
  (level, rule, message, mend, about = []) => ({ level, rule, message, mend, file, about });

const ofSizes = (brief: Brief, pieces: readonly Piece[], make: Make): readonly Finding[] => {
  const { bags } = brief;
  const roomless = bags.filter((bag) => {
    const { grams, litres } = roomOf(bag);
    return litres <= 0 || (grams !== undefined && grams <= 0);
  });
  const stuck = pieces.filter((piece) => bags.length > 0 && !bags.some((bag) => goesIn(stiffBox(piece), bag)));
  const heavy = pieces.filter(
    ({ grams }) =>
      bags.length > 0 && bags.every((bag) => grams.value > (roomOf(bag).grams ?? Number.POSITIVE_INFINITY)),
  );
  const overGuideline = bags.filter(
    ({ role, cm }) => role === 'cabin' && cm?.some((side, index) => side > (BAG_GUIDELINES.cabin.cm[index] ?? 0)),
  );
  return [
    ...roomless.map(({ name }) =>
      make('error', 'bag-without-room', phrase('bag', 'no room', { bag: name }), phrase('bag', 'no room mend', {})),
    ),
    ...stuck.map(({ id, name }) =>
      make(
        'error',
        'piece-too-long',
        phrase('bag', 'too long', { piece: name, sides: stiffSides(pieces, id) }),
        phrase('bag', 'too long mend', {}),
        [id],
      ),
    ),
    ...heavy.map(({ id, name, grams }) =>
      make(
        'error',
        'piece-too-heavy',
        phrase('bag', 'too heavy', { piece: name, grams: grams.value }),
        phrase('bag', 'too heavy mend', {}),
        [id],
      ),
    ),
    ...overGuideline.map(({ name }) =>
      make(
        'advice',
        'bag-over-guideline',
        phrase('bag', 'over guideline', { bag: name, length: 56, width: 45, depth: 25 }),
        phrase('bag', 'ask the carrier', {}),
      ),
    ),
  ];
};

const stiffSides = (pieces: readonly Piece[], id: string): string => {
  const piece = pieces.find((one) => one.id === id);
  return (piece === undefined ? undefined : stiffBox(piece))?.map((side) => String(Math.round(side))).join(' × ') ?? '';
};

const ofWeights = (question: PackQuestion, packed: PackedTrip, report: BagReport, make: Make): readonly Finding[] => {
  const nameOf = (id: string): string => question.pieces.find((piece) => piece.id === id)?.name ?? id;
  const { steps, fits } = report.leaveOut;
  const mend =
    steps.length === 0 || !fits
      ? phrase('bag', steps.length === 0 ? 'pack less' : 'leave out in vain', {})
      : phrase('bag', 'leave out', {
          pieces: steps.map(({ piece }) => nameOf(piece)),
          grams: steps.reduce((sum, { grams }) => sum + grams, 0),
          looks: steps.at(-1)?.looksLeft ?? 0,
          unserved: (report.leaveOut.planned ?? steps.at(-1)?.unserved ?? []).length,
          counts: report.leaveOut.planned === undefined ? 'each by itself' : 'planned again',
        });
  return question.brief.bags.flatMap((bag: Bag, index): Finding[] => {
    const loads = packed.loads.filter((load) => load.bag === index);
    const heaviest = loads.toSorted((a, b) => b.grams.value - a.grams.value)[0];
    const fullest = loads.toSorted((a, b) => b.litres.value - a.litres.value)[0];
    if (heaviest === undefined || fullest === undefined) return [];
    const found: Finding[] = [];
    // over a share of a bag that others may have room in
    const shared = bag.sharedBy !== undefined;
    const help = shared ? phrase('bag', 'shared mend', { trip: question.brief.id }) : mend;
    const limit = bag.limitKg === undefined ? undefined : bag.limitKg * 1000;
    const on = heaviest.journey?.on ?? question.brief.from;
    if (limit !== undefined && heaviest.grams.value > limit + 1e-6) {
      const over = heaviest.grams.value - limit;
      const message = phrase('bag', 'over weight', { bag: bag.name, over, limit, date: on });
      found.push(make(shared ? 'warning' : 'error', 'bag-over-weight', message, help));
    } else if (limit !== undefined && heaviest.grams.high > limit) {
      const message = phrase('bag', 'near the limit', {
        bag: bag.name,
        grams: heaviest.grams.value,
        high: heaviest.grams.high,
        limit,
      });
      found.push(make('advice', 'bag-near-limit', message, phrase('bag', 'weigh them', {})));
    }
    if (fullest.litres.value > bag.litres + 1e-6) {
      const sure = fullest.litres.low > bag.litres;
      const message = phrase('bag', 'over full', { bag: bag.name, litres: fullest.litres.value, room: bag.litres });
      found.push(make(sure && !shared ? 'error' : 'warning', 'bag-over-full', message, help));
    }
    return found;
  });
};

const ofFlights = (question: PackQuestion, packed: PackedTrip, make: Make): readonly Finding[] => {
  const { brief } = question;
  if (!packed.journeys.some(({ occasion }) => isFlight(occasion))) return [];
  const found: Finding[] = [];
  const held = packed.packing.bags.flatMap(({ bag, sundries }) =>
    sundries.map(({ sundry }) => ({ sundry, role: bag.role, bag: bag.name })),
  );
  const cabin = held.filter(({ role }) => role !== 'hold');
  for (const { sundry, bag } of cabin) {
    const { name, millilitres = 0, group } = sundry;
    if (millilitres > LIQUIDS.containerMl && group !== 'medicines') {
      const message = phrase('bag', 'container too large', {
        what: name,
        millilitres,
        limit: LIQUIDS.containerMl,
        bag,
      });
      found.push(make('error', 'liquid-over-100', message, phrase('bag', 'container too large mend', {})));
    }
  }
  const liquids = cabin.filter(({ sundry }) => sundry.group !== 'medicines');
  const total = liquids.reduce((sum, { sundry }) => sum + millilitresOf(sundry), 0);
  if (total > LIQUIDS.bagMl) {
    const message = phrase('bag', 'liquids too many', { millilitres: total, limit: LIQUIDS.bagMl });
    found.push(make('error', 'liquids-over-litre', message, phrase('bag', 'liquids too many mend', {})));
  }
  for (const { sundry, role } of held) {
    const { name, wattHours = 0, spareBattery = false } = sundry;
    if (wattHours > BATTERIES.approvedWh) {
      const message = phrase('bag', 'battery refused', { what: name, wattHours, limit: BATTERIES.approvedWh });
      found.push(make('error', 'battery-over-160', message, phrase('bag', 'battery refused mend', {})));
    } else if (wattHours > BATTERIES.freeWh) {
      const message = phrase('bag', 'battery asks', { what: name, wattHours, limit: BATTERIES.freeWh });
      found.push(make('warning', 'battery-over-100', message, phrase('bag', 'battery asks mend', {})));
    }
    if (spareBattery && role === 'hold') {
      const message = phrase('bag', 'spare in the hold', { what: name });
      found.push(make('error', 'spare-battery-in-hold', message, phrase('bag', 'spare in the hold mend', {})));
    }
  }
  for (const { name, guideline, limitKg, role } of brief.bags) {
    if (guideline === undefined && (limitKg !== undefined || role === 'personal')) continue;
    found.push(
      make(
        'advice',
        'carrier-rule',
        phrase('bag', 'carrier rule', { bag: name }),
        phrase('bag', 'carrier rule mend', {}),
      ),
    );
  }
  return found;
};

const ofTransit = (question: PackQuestion, report: BagReport, make: Make): readonly Finding[] => {
  const names = (ids: readonly string[]): string[] =>
    ids.flatMap((id) => {
      const piece = question.pieces.find((one) => one.id === id);
      return piece === undefined ? [] : [piece.name];
    });
  const best = report.transit.toSorted((a, b) => b.moreGrams - a.moreGrams)[0];
  const near = report.loads.some(({ bag, grams }) => {
    const limit = question.brief.bags.find(({ name }) => name === bag)?.limitKg;
    return limit !== undefined && grams.high > limit * 1000;
  });
  const tight = !report.fits || near;
  if (best === undefined || !tight || best.moreGrams < WORTH_SAYING_GRAMS) return [];
  const what = question.brief.occasions.find(({ id }) => id === best.occasion)?.what ?? best.occasion;
  return [
    make(
      'advice',
      'wear-in-transit',
      phrase('bag', 'wear it', { occasion: what, grams: best.moreGrams, pieces: names(best.pieces) }),
      phrase('bag', 'wear it mend', {}),
      [best.occasion],
    ),
  ];
};

/** What the check has to say of the bags. */
export const findingsOfBag = (question: PackQuestion, packed: PackedTrip, report: BagReport): readonly Finding[] => {
  const make = makeFor(question.brief.file);
  return [
    ...ofSizes(question.brief, question.pieces, make),
    ...ofWeights(question, packed, report, make),
    ...ofFlights(question, packed, make),
    ...ofTransit(question, report, make),
  ];
};

/** Lines of the stock that carry a liquid or a battery but not how much: the rules cannot be checked then. */
export const findingsOfStock = (stock: readonly StockLine[]): readonly Finding[] =>
  stock
    .filter(({ group, millilitres }) => group === 'liquids' && millilitres === undefined)
    .map(({ name, file, line }) => ({
      level: 'advice' as const,
      rule: 'liquid-without-millilitres',
      message: phrase('bag', 'millilitres missing', { what: name }),
      mend: phrase('bag', 'millilitres missing mend', {}),
      file,
      ...(line === undefined ? {} : { line }),
      about: [],
    }));
