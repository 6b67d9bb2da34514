import type { Formats } from '../formats.ts';
import { doing } from './doing.ts';

const PARTS: Readonly<Record<string, string>> = { thighs: 'thighs', calves: 'lower legs' };

interface Span {
  readonly low: number;
  readonly high: number;
}

/** Index at its highest, and first and last days of the stretches of sun, side by side. */
interface SunnyDays extends Stretches {
  readonly index: number;
  readonly band: string;
}
interface Stretches {
  readonly firstDays: readonly string[];
  readonly lastDays: readonly string[];
}
const daysIn = ({ firstDays, lastDays }: Stretches, f: Formats): string => f.list(f.dateStretches(firstDays, lastDays));

/** Bands from which the global index asks for extra protection. */
const asksExtra = ({ band }: { readonly band: string }): boolean => band === 'very high' || band === 'extreme';
const sunAdvice = (v: { readonly band: string }): string =>
  asksExtra(v)
    ? 'keep out of the sun around midday; shirt, brimmed hat and sunscreen are a must'
    : 'seek shade around midday, cover up and use sunscreen';
const ofCloth = (v: { readonly band: string }): string =>
  asksExtra(v) ? ' No cloth here is rated for UV: the close-woven keeps off most, or clothes of UPF 30 and more.' : '';

/** English sentences of the comfort room. */
export const comfort = {
  'comfortable outdoors': (v: Span & { activity: string }, f: Formats) =>
    `Comfortable outdoors at ${f.celsiusRange(v.low, v.high)} while ${doing(v.activity)}, layer by layer.`,
  'comfortable indoors': (v: Span & { activity: string }, f: Formats) =>
    `Comfortable in a room of ${f.celsiusRange(v.low, v.high)} while ${doing(v.activity)}, layer by layer.`,
  'how degrees are found': () =>
    'Degrees are estimates from published garment tables, give or take a quarter of the insulation: ISO 7730 in rooms and in warmth, ISO 11079 in the cold; the join between 10 and 20 °C is our own. People differ; go by how you feel.',
  'feels cold': () => 'Dressed half a step warmer than most people, for somebody who feels the cold (an estimate).',
  'feels cold short': () => 'for one who feels the cold',
  'feels warm short': () => 'for one who feels the heat',
  'feels warm': () => 'Dressed half a step cooler than most people, for somebody who feels the heat (an estimate).',
  'clo range': (v: { off: number; on: number }, f: Formats) =>
    `This look insulates ${f.number(v.off, 2)} clo with its layers off and ${f.number(v.on, 2)} clo with all on (estimated).`,
  'counted as worn': (v: { underthings: number; socks: number }, f: Formats) =>
    `Underwear counts as worn (${f.number(v.underthings, 2)} clo), and thin socks in closed shoes (${f.number(v.socks, 2)} clo), listed or not.`,
  'uv index': (v: { index: number; band: string }, f: Formats) =>
    `UV index up to ${f.count(v.index)} (${v.band}) under a clear sky.`,
  'uv index if it clears': (v: { index: number; band: string }, f: Formats) =>
    `UV index at most ${f.count(v.index)} (${v.band}) if the sky clears.`,
  'sun on the trip': (v: SunnyDays, f: Formats) =>
    `Sun: UV index up to ${f.count(v.index)} (${v.band}) under a clear sky, more on snow, water and high up. On ${daysIn(v, f)} ${sunAdvice(v)}; follow the local UV warning.${ofCloth(v)}`,
  'sun on the trip if it clears': (v: SunnyDays, f: Formats) =>
    `Sun: UV index at most ${f.count(v.index)} (${v.band}) if the sky clears, more on snow, water and high up. Should it clear on ${daysIn(v, f)}: ${sunAdvice(v)}; follow the local UV warning.${ofCloth(v)}`,
  'take for the sun': (v: { pieces: readonly string[] }, f: Formats) => `Take ${f.list(v.pieces)} for the sun.`,
  'take a hat': () => 'Nothing packed shades the face: take a hat with a brim.',
  'take sunglasses': () => 'Take sunglasses.',
  'bare to the sun': (v: { parts: readonly string[] }, f: Formats) =>
    `Bare to the sun: ${f.list(v.parts.map((part) => PARTS[part] ?? part))}.`,
  'sheer to the sun': (v: { parts: readonly string[] }, f: Formats) =>
    `Sheer cloth lets the sun through: use sunscreen on ${f.list(v.parts.map((part) => PARTS[part] ?? part))} as well.`,
  'cold caution': (v: { low: number }, f: Formats) =>
    `It may be as cold as ${f.celsius(v.low)}. Keep head, hands and feet covered and dry, warm up indoors often, and follow local cold warnings; with a heart, lung or circulation condition, ask a doctor first.`,
  'beyond travel clothes': (v: { low: number }, f: Formats) =>
    `At ${f.celsius(v.low)} no clothes in a travel bag are enough. Stay indoors, or get cold-weather clothing and advice from people who know the place; follow local warnings. Frostbite is a medical emergency.`,
  'too cold to keep still': (v: { low: number; activity: string }, f: Formats) =>
    `At ${f.celsius(v.low)} no clothes in a travel bag are warm enough for ${doing(v.activity)}. Keep it short, keep moving, warm up indoors in between, or hire clothing made for such cold; follow local cold warnings, and with a heart, lung or circulation condition ask a doctor first.`,
  'cold swim': (v: { low: number }, f: Formats) =>
    `The air is at ${f.celsius(v.low)}, and open water will be cold: it takes the breath at once and the strength within minutes. Swim only where lifeguards or people who know the water say you may, never alone; go in slowly, stay in briefly, then dry off and dress warmly at once. With a heart or circulation condition, or in doubt, ask a doctor first.`,
  'cold swim in short': () =>
    'Cold water takes the breath at once: go in slowly, stay briefly, never alone; ask a doctor first if in doubt.',
  'dark all day': () =>
    'The sun does not rise: it is dusk at best all day, so wear something light or reflective, carry a light, and mind ice you cannot see.',
  'dark on the trip': (v: Stretches, f: Formats) =>
    `On ${daysIn(v, f)} the sun does not rise: it is dusk at best all day, so wear something light or reflective, carry a light, and mind ice you cannot see.`,
  'dark mark': () => 'No sunrise.',
  'heat caution': (v: { high: number }, f: Formats) =>
    `It may reach ${f.celsius(v.high)}. Drink water, keep to the shade, rest in the hottest hours and follow local heat warnings; with a medical condition, ask a doctor first.`,
  'wet ground': () => 'The ground may be wet and slippery: wear soles that grip and take your time.',
  'wet on the trip': (v: Stretches, f: Formats) =>
    `On ${daysIn(v, f)} the ground may be wet and slippery: wear soles that grip and take your time.`,
  'wet mark': () => 'Wet ground.',
  'wet and uneven': () =>
    'Wet, uneven ground: wear shoes that grip, turn back in bad weather and follow local mountain and path warnings.',
  'wet and uneven on the trip': (v: Stretches, f: Formats) =>
    `On ${daysIn(v, f)} wet, uneven ground: wear shoes that grip, turn back in bad weather and follow local mountain and path warnings.`,
  'wet and uneven mark': () => 'Wet, uneven ground.',
  'heels on bad ground': () => 'These heels are not safe on such ground: carry them and change when you are there.',
} satisfies Record<string, (values: never, formats: Formats) => string>;
