export { type LiveServer, startServer } from './server.ts';
