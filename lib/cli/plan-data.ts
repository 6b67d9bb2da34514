import { cautionsOfTrip, feelsInWords, feelsOf, lookComfort, uvBand } from '../comfort/index.ts';
import { type Guide, wayInWords } from '../guide/index.ts';
import type { Capsule, Finding, LookComfort, PlannedOccasion } from '../model/index.ts';
import {
  findingsOfBrief,
  findingsOfFixed,
  findingsOfNumber,
  findingsOfPlan,
  findingsOfRepeats,
  findingsOfWashing,
  type Moment,
  momentsOf,
} from '../plan/index.ts';
import type { Phrase } from '../words/index.ts';

/** A capsule and its plan. */
export interface Planned extends Pick<Guide, 'brief' | 'pieces' | 'plan'> {
  readonly capsule: Capsule;
}

/** What there is to say of a plan, its occasions without a look first. */
export const findingsToTell = ({ plan, brief, pieces, capsule }: Planned): readonly Finding[] => [
  ...findingsOfPlan(plan, brief, pieces),
  ...findingsOfBrief(brief),
  ...findingsOfWashing(plan, brief, pieces),
  ...findingsOfNumber(pieces, brief, capsule),
  ...findingsOfFixed(plan, brief),
  ...findingsOfRepeats(plan, brief, capsule, pieces),
];

const rounded = (value: number, digits: number): number => Number(value.toFixed(digits));

const comfortData = ({ activity, where, lowC, highC, clo, steps }: LookComfort) => ({
  activity,
  where,
  lowC,
  highC,
  clo,
  steps,
});

/** Insulation that the air asks for, clo; the warm end is left out where nothing is too warm. */
const requiredData = ({ required }: Moment) =>
  required === undefined || required.method === 'none'
    ? {}
    : {
        required: {
          minClo: rounded(required.min, 2),
          method: required.method,
          ...(Number.isFinite(required.max) ? { maxClo: rounded(required.max, 2), maxMethod: required.maxMethod } : {}),
        },
      };

/** A reason as data, beside its sentence in `reasons`. */
const reasonData = ({ room, key, values }: Phrase) => ({ reason: `${room}/${key}`, values });

const occasionData = (
  { brief, pieces, capsule }: Planned,
  planned: PlannedOccasion,
  moments: ReadonlyMap<string, Moment>,
) => {
  const { occasion: id, look, uvIndex, ...rest } = planned;
  const occasion = brief.occasions.find((one) => one.id === id);
  const moment = moments.get(id);
  const byId = new Map(pieces.map((piece) => [piece.id, piece]));
  return {
    occasion: id,
    ...(occasion === undefined
      ? {}
      : {
          what: occasion.what,
          ...(occasion.at === undefined ? { part: occasion.part } : { at: occasion.at }),
          ...(occasion.until === undefined ? {} : { until: occasion.until }),
          dress: occasion.dress,
          setting: occasion.setting,
          activity: occasion.activity,
          needs: occasion.needs,
          transit: occasion.transit,
        }),
    ...(look === undefined
      ? {}
      : { look: { ...look, worn: look.worn.map((worn) => ({ ...worn, name: byId.get(worn.piece)?.name })) } }),
    ...rest,
    there: wayInWords(planned, (id) => byId.get(id)?.name ?? id),
    why: planned.reasons.map(reasonData),
    ...(look === undefined || occasion === undefined || moment?.swims === true
      ? {}
      : {
          comfort: comfortData(
            lookComfort(look, byId, occasion.activity, occasion.setting.where, feelsOf(brief, capsule.traveller)),
          ),
        }),
    ...(moment === undefined ? {} : requiredData(moment)),
    ...(uvIndex === undefined ? {} : { uv: { index: rounded(uvIndex, 1), band: uvBand(uvIndex) } }),
  };
};

/** The plan as data, with all that its text says: what is asked, what is worn, why, and what there is to say of it. */
export const planData = (planned: Planned) => {
  const { plan, brief, capsule } = planned;
  const { days, ...rest } = plan;
  const moments = new Map(momentsOf(brief, plan.traveller).map((moment) => [moment.occasion.id, moment]));
  return {
    ...rest,
    notes: [...feelsInWords(brief, capsule.traveller), ...cautionsOfTrip(days)],
    days: days.map((day) => ({
      ...day,
      occasions: day.occasions.map((occasion) => occasionData(planned, occasion, moments)),
    })),
    findings: findingsToTell(planned),
  };
};
