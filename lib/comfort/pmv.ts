/** What surrounds a person, and what they do, as ISO 7730 asks for it. */
export interface Surroundings {
  readonly airC: number;
  /** Mean radiant temperature, °C. */
  readonly radiantC: number;
  /** Air speed over the body, metres a second, walking included. */
  readonly airMs: number;
  readonly humidityPercent: number;
  readonly met: number;
}

/** 1 clo in m²K/W and 1 met in W/m². Source: ISO 7730:2005, clause 4. */
export const CLO_IN_M2KW = 0.155;
export const MET_IN_WM2 = 58.15;

/** Beyond this no garment table reaches; the solvers stop here. */
export const CLO_CEILING = 6;

const KELVIN = 273;

/** Water vapour pressure in Pa. Source: ISO 7730:2005, Annex D. */
const vapourPa = (airC: number, humidityPercent: number): number =>
  humidityPercent * 10 * Math.exp(16.6536 - 4030.183 / (airC + 235));

const areaFactor = (iclM2kw: number): number => (iclM2kw <= 0.078 ? 1 + 1.29 * iclM2kw : 1.05 + 0.645 * iclM2kw);

/** The vote that a surplus of heat of one W/m² makes. Source: ISO 7730:2005, equation 1. */
const voteOfHeat = (met: number): number => 0.303 * Math.exp(-0.036 * met * MET_IN_WM2) + 0.028;

/** The surplus of heat, W/m², that stands behind a vote at an activity. */
export const heatOfVote = (vote: number, met: number): number => vote / voteOfHeat(met);

/** Heat the body must give off dry through its clothes for a PMV, W/m²: it does not depend on the clothes. */
const dryHeatFor = (pmvTarget: number, s: Surroundings): number => {
  const m = s.met * MET_IN_WM2;
  const pa = vapourPa(s.airC, s.humidityPercent);
  const skin = 3.05e-3 * (5733 - 6.99 * m - pa);
  const sweat = m > MET_IN_WM2 ? 0.42 * (m - MET_IN_WM2) : 0;
  const breath = 1.7e-5 * m * (5867 - pa) + 0.0014 * m * (34 - s.airC);
  return m - skin - sweat - breath - heatOfVote(pmvTarget, s.met);
};

/** Dry heat that leaves a clothed surface, W/m². */
const dryHeatFrom = (surfaceC: number, iclM2kw: number, s: Surroundings): number => {
  const convection = Math.max(2.38 * Math.abs(surfaceC - s.airC) ** 0.25, 12.1 * Math.sqrt(s.airMs));
  const radiation = 3.96e-8 * ((surfaceC + KELVIN) ** 4 - (s.radiantC + KELVIN) ** 4);
  return areaFactor(iclM2kw) * (radiation + convection * (surfaceC - s.airC));
};

const skinC = (s: Surroundings): number => 35.7 - 0.028 * s.met * MET_IN_WM2;

/**
 * Predicted mean vote, −3 cold to +3 hot, for clothes of `clo` as worn (dynamic). Source: ISO 7730:2005, Annex D.
 * Valid for 10 to 30 °C, air up to 1 m/s, 0 to 2 clo, 0.8 to 4 met.
 */
export const pmv = (s: Surroundings, clo: number): number => {
  const icl = clo * CLO_IN_M2KW;
  const skin = skinC(s);
  let low = Math.min(s.airC, s.radiantC) - 40;
  let high = Math.max(skin, s.airC, s.radiantC) + 40;
  for (let step = 0; step < 60; step += 1) {
    const surface = (low + high) / 2;
    if (skin - icl * dryHeatFrom(surface, icl, s) > surface) low = surface;
    else high = surface;
  }
  return voteOfHeat(s.met) * (dryHeatFor(0, s) - dryHeatFrom((low + high) / 2, icl, s));
};

/** Predicted percentage of people dissatisfied. Source: ISO 7730:2005, equation 5. */
export const ppd = (vote: number): number => 100 - 95 * Math.exp(-0.03353 * vote ** 4 - 0.2179 * vote ** 2);

/**
 * Clothing as worn (dynamic clo) that gives a PMV; 0 when even bare skin is too warm, `CLO_CEILING` when nothing is
 * warm enough. The heat to be given off is known beforehand, so one unknown is left and bisection finds it.
 */
export const cloForPmv = (target: number, s: Surroundings): number => {
  const heat = dryHeatFor(target, s);
  const skin = skinC(s);
  let low = 0;
  let high = CLO_CEILING;
  for (let step = 0; step < 24; step += 1) {
    const clo = (low + high) / 2;
    const icl = clo * CLO_IN_M2KW;
    if (dryHeatFrom(skin - icl * heat, icl, s) > heat) low = clo;
    else high = clo;
  }
  if (low === 0) return 0;
  return high === CLO_CEILING ? CLO_CEILING : (low + high) / 2;
};

/** A moving body pumps air through its clothes. Source: ASHRAE 55, 0.6 + 0.4/met from 1.2 to 2 met; held at 2 beyond. */
export const dynamicShare = (met: number): number => (met <= 1.2 ? 1 : 0.6 + 0.4 / Math.min(met, 2));

/** Air speed over a body that moves. Source: ISO 7730:2005, Annex C: still air + 0.3 (met − 1); the method ends at 1 m/s. */
export const relativeAirMs = (airMs: number, met: number): number =>
  Math.min(1, Math.max(0, airMs) + Math.max(0, 0.3 * (met - 1)));

/** Clothes by the tables (static clo) that give a PMV. */
export const garmentsForPmv = (target: number, s: Surroundings): number => cloForPmv(target, s) / dynamicShare(s.met);

/** Clothes by the tables (static clo) that keep the vote between −band and +band. */
export const cloBandFromPmv = (s: Surroundings, band: number): { readonly min: number; readonly max: number } => ({
  min: garmentsForPmv(-band, s),
  max: garmentsForPmv(band, s),
});
