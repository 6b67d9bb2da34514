export { motifsOf } from './items.ts';
export { type PublishOptions, type PublishResult, publish } from './publish.ts';
