export { type PublishOptions, type PublishResult, publish } from './publish.ts';
