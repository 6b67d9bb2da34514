/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import { filterLooks } from './filters.ts';
import { keepOffline } from './offline.ts';
import { keepTicks } from './ticks.ts';
import { markToday } from './today.ts';

markToday(document, new Date(), new URL(location.href));
filterLooks(document);
keepTicks(document, () => localStorage);
keepOffline(document);
