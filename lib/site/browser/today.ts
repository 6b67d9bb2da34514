/// <reference lib="dom" />
/// <reference lib="dom.iterable" />

/** The calendar date where the reader is, `2027-10-02`. */
export const localDate = (now: Date): string =>
  [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0')).join('-');

/** True on the way back: the browser then finds the place the reader left. */
const returning = (): boolean =>
  performance
    .getEntriesByType('navigation')
    .some((entry) => (entry as PerformanceNavigationTiming).type === 'back_forward');

/** Shows the plan of the date on the cover and marks it among the days; `?day=2027-10-05` in the address shows another. */
export const markToday = (document: Document, now: Date, address: URL): void => {
  const asked = address.searchParams.get('day');
  const today = localDate(now);
  const wanted = asked ?? today;
  const days = [...document.querySelectorAll<HTMLElement>('[data-day]')];
  const found = days.find(({ dataset }) => dataset.day === wanted);
  if (found === undefined) return;
  for (const day of days) if (day.classList.contains('today')) day.hidden = day !== found;
  if (wanted !== today) return;
  found.classList.add('now');
  for (const flag of found.querySelectorAll<HTMLElement>('[data-flag]')) flag.hidden = false;
  for (const stop of document.querySelectorAll<HTMLElement>('[data-stop]')) {
    stop.classList.toggle('now', stop.dataset.stop === today);
    stop.classList.toggle('past', (stop.dataset.stop ?? '') < today);
  }
  if (document.querySelector('.week') !== null && address.hash === '' && !returning()) found.scrollIntoView();
};
