import type { Job } from '../job.ts';
import type { ProseTypes } from '../set/markdown.ts';
import { resized } from '../types.ts';

export const proseTypes = (job: Job, points: number): ProseTypes => {
  const roman = resized(job.types.prose, points);
  return {
    roman,
    italic: { ...roman, style: 'title italic' },
    strong: { ...roman, style: 'serif' },
    heading: resized(job.types.panel, points + 1.5),
  };
};

export const smallProse = (job: Job): ProseTypes => {
  const roman = resized(job.types.text, 7.8);
  return {
    roman,
    italic: { ...roman, style: 'text italic' },
    strong: { ...roman, style: 'text medium' },
    heading: { ...roman, style: 'text semibold' },
  };
};
