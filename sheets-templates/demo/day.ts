// The day on which the demonstration is written down, and the days of its trip. Whoever writes a sheet moves them to the day of today.
import type { TemplateDate } from '../template';

export const demoDay = '2026-11-25';

/** The trip is flown on that very day, so that its reports are of today. */
export const demoTrip = { firstDay: demoDay, lastDay: demoDay } as const;

export const onTrip = (date: string): TemplateDate => ({ date, moves: 'trip' });

/** The same day whenever the sheet is written. */
export const fixedDay = (date: string): TemplateDate => ({ date, moves: 'never' });

/** Data effective on this day of its series. */
export const effective = (date: string, series: string): TemplateDate => ({ date, moves: { series, inForceOn: 'day' } });
export const effectiveOnTrip = (date: string, series: string): TemplateDate => ({ date, moves: { series, inForceOn: 'trip' } });

/** The day on which data of a series was loaded. */
export const loadedOn = (date: string, series: string): TemplateDate => ({ date, moves: { series, inForceOn: 'day', loaded: true } });
