import { CLO_CEILING, CLO_IN_M2KW } from './pmv.ts';

/** A person outdoors in the cold, as ISO 11079 asks for it. */
export interface ColdExposure {
  readonly airC: number;
  readonly radiantC: number;
  /** Heat the body makes, W/m². */
  readonly metabolicWm2: number;
  /** Air speed relative to the body, metres a second; never below 0.4. */
  readonly airMs: number;
  /** Walking speed, metres a second; the method ends at 1.2. */
  readonly walkMs: number;
  readonly humidityPercent: number;
  /** Air permeability of the outer cloth, l/(m² s): 1 windproof, 8 close-woven, 50 woven, 100 open. */
  readonly airPermeability: number;
}

/** `minimal`: the body is allowed to cool slightly; `neutral`: it is not. */
export type ColdCriterion = 'minimal' | 'neutral';

const KELVIN = 273;
const RADIATING_SHARE = 0.77;
/** Growth of the clothed surface with insulation. 1.197 in the method's published programme, 1.97 in ISO 9920: 0.06 clo apart. */
const AREA_GAIN = 1.197;

const saturatedKpa = (c: number): number => 0.1333 * Math.exp(18.6686 - 4030.183 / (c + 235));

const skin = (metabolicWm2: number, criterion: ColdCriterion): { readonly c: number; readonly wet: number } =>
  criterion === 'minimal'
    ? { c: 33.34 - 0.0354 * metabolicWm2, wet: 0.06 }
    : { c: 35.7 - 0.0285 * metabolicWm2, wet: 0.001 * metabolicWm2 };

const boundaryM2kw = (e: ColdExposure): number => 0.092 * Math.exp(-0.15 * e.airMs - 0.22 * e.walkMs) - 0.0045;

interface Balance {
  /** Insulation of the clothes as worn, m²K/W. */
  readonly resultant: number;
  readonly areaFactor: number;
}

const solveBalance = (e: ColdExposure, criterion: ColdCriterion, debtWm2: number): Balance => {
  const m = e.metabolicWm2;
  const { c: skinC, wet } = skin(m, criterion);
  const breathC = 29 + 0.2 * e.airC;
  const airKpa = (e.humidityPercent / 100) * saturatedKpa(e.airC);
  const breath = 1.73e-2 * m * (saturatedKpa(breathC) - airKpa) + 1.4e-3 * m * (breathC - e.airC);
  const boundary = boundaryM2kw(e);
  const surplus = (insulation: number): number => {
    const fcl = 1 + AREA_GAIN * insulation;
    const evaporation = (wet * (saturatedKpa(skinC) - airKpa)) / ((0.06 / 0.38) * (boundary + insulation));
    const dry = m - evaporation - breath + debtWm2;
    const surfaceC = skinC - insulation * dry;
    const apart = surfaceC - e.radiantC;
    const radiantCoefficient =
      Math.abs(apart) < 1e-9
        ? 4 * 5.67e-8 * 0.95 * RADIATING_SHARE * (KELVIN + surfaceC) ** 3
        : (5.67e-8 * 0.95 * RADIATING_SHARE * ((KELVIN + surfaceC) ** 4 - (KELVIN + e.radiantC) ** 4)) / apart;
    const convection = 1 / boundary - radiantCoefficient;
    return dry - fcl * (radiantCoefficient * apart + convection * (surfaceC - e.airC));
  };
  let low = 0;
  let high = CLO_CEILING * CLO_IN_M2KW;
  for (let step = 0; step < 24; step += 1) {
    const middle = (low + high) / 2;
    if (surplus(middle) > 0) high = middle;
    else low = middle;
  }
  const resultant = (low + high) / 2;
  return { resultant, areaFactor: 1 + AREA_GAIN * resultant };
};

const settled = (e: ColdExposure): ColdExposure => ({
  ...e,
  airMs: Math.max(0.4, e.airMs),
  walkMs: Math.min(1.2, e.walkMs),
});

/**
 * Required insulation IREQ, clo, as it must be on the body in wind and movement.
 * Source: ISO 11079:2007, Annex F. Meant for 10 °C and below.
 * `debtWm2` is the heat the body may lose beyond what it makes: 40 Wh/m² over the hours of a limited exposure.
 */
export const requiredInsulation = (exposure: ColdExposure, criterion: ColdCriterion, debtWm2 = 0): number =>
  solveBalance(settled(exposure), criterion, debtWm2).resultant / CLO_IN_M2KW;

/** The same as clothes by the tables (static clo): what wind, walking and open cloth take away is added. Source: as above. */
export const requiredGarments = (exposure: ColdExposure, criterion: ColdCriterion, debtWm2 = 0): number => {
  const e = settled(exposure);
  const { resultant, areaFactor } = solveBalance(e, criterion, debtWm2);
  const left =
    0.54 * Math.exp(-0.15 * e.airMs - 0.22 * e.walkMs) * e.airPermeability ** 0.075 -
    0.06 * Math.log(e.airPermeability) +
    0.5;
  const total = (resultant + boundaryM2kw(e) / areaFactor) / left;
  return Math.max(0, total - 0.085 / areaFactor) / CLO_IN_M2KW;
};
