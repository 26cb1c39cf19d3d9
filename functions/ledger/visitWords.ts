// How the diary words what a visit changes, and the title of such a visit, read back from those words by the calendar.
import type { DiaryLoad } from '../../core/ledger/diary';

/** "28-day, cycle 2412: navigation (North, South); 56-day, cycle 2413: charts (South)". */
export function visitText({ changes }: Pick<DiaryLoad, 'changes'>): string {
  return changes
    .map(({ series, identifier, databases }) => {
      const what = databases.map(({ database, aircraft }) => `${database.name} (${aircraft.map(({ name }) => name).join(', ')})`).join(', ');
      return `${series}${identifier === '' ? '' : `, cycle ${identifier}`}: ${what}`;
    })
    .join('; ');
}

const seriesOfVisit = /(?:^|; )(\d+(?:-day| from \d{4}-\d{2}-\d{2})|dates of [^:;]+)(?:, cycle (\d+))?: /g;

/** "28-day and 56-day, cycle 2413", without the databases. */
export function visitTitle(about: string): string {
  const byCycle = new Map<string, string[]>();
  about.replace(seriesOfVisit, (whole: string, series: string, cycle = '') => {
    byCycle.set(cycle, [...(byCycle.get(cycle) ?? []), series]);
    return whole;
  });
  const titles = [...byCycle].map(([cycle, series]) => `${series.join(' and ')}${cycle === '' ? '' : `, cycle ${cycle}`}`);
  return titles.length === 0 ? (about.split(':')[0] ?? about) : titles.join('; ');
}
