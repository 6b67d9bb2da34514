import type { GuideLook } from '../guide/record.ts';
import type { Job } from './job.ts';

/** How warm it is good for outdoors. */
export const outdoors = (job: Job, look: GuideLook): string =>
  job.say('good between', {
    low: look.outdoors.lowC,
    high: look.outdoors.highC,
    activity: look.outdoors.activity,
  });

/** When to wear it, in full; how warm it is good for where nothing else is said. */
export const whenToWear = (job: Job, look: GuideLook): string =>
  look.wearIt.length > 0 ? look.wearIt.map(job.sayPhrase).join(' ') : outdoors(job, look);

/** The names of its pieces, as a sentence. */
export const whatItIs = (job: Job, { look }: GuideLook): string =>
  `${job.formats.list(job.names(look.worn.map(({ piece }) => piece)))}.`;
