// The pilot's papers as written down: found by name for one authority, and why one that is wanted cannot be used.
import type { Named } from '../basics/named';
import type { Remark } from './experience';

/** One line of the pilot's papers: a date, or a word such as the class of a medical. */
export interface Paper {
  readonly item: Named;
  readonly day: number | undefined;
  /** What stands there instead of a date; blank where nothing does. */
  readonly text: string;
  /** For an item of the owner's own: how long it lasts; undefined where the date is the last good day. */
  readonly months: number | undefined;
}

/** Papers that rules need beside those they name. */
export const medicalPapers = { examination: 'medical examination', birth: 'birth date', class: 'medical class' } as const;

export type Key = (name: string) => string;

/** Why nothing can be said, and of which papers that holds. */
export interface Gap {
  readonly remark: Remark;
  readonly papers?: readonly string[];
}

/** Finds papers of one authority; one written "FAA flight review" goes before a plain "flight review". */
export class Papers {
  private readonly found: ReadonlyMap<string, readonly Paper[]>;

  constructor(
    papers: readonly Paper[],
    private readonly authority: string,
    private readonly key: Key,
    private readonly asOfDay: number,
  ) {
    const found = new Map<string, Paper[]>();
    for (const paper of papers) found.set(paper.item.key, [...(found.get(paper.item.key) ?? []), paper]);
    this.found = found;
  }

  named(name: string): readonly Paper[] {
    return this.found.get(this.key(`${this.authority} ${name}`)) ?? this.found.get(this.key(name)) ?? [];
  }

  days(name: string): number[] {
    return this.named(name).flatMap(({ day }) => (day === undefined ? [] : [day]));
  }

  /** Days on which something was done; what lies after the day asked has not been done. */
  doneDays(name: string): number[] {
    return this.days(name).filter((day) => day <= this.asOfDay);
  }

  /** Latest day on which something was done. */
  done(name: string): number | undefined {
    const past = this.doneDays(name);
    return past.length === 0 ? undefined : Math.max(...past);
  }

  lastGood(name: string): number | undefined {
    const days = this.days(name);
    return days.length === 0 ? undefined : Math.max(...days);
  }

  /** Why none of these gives a day: written down but no date, dated after the day asked, or not written down at all. */
  gap(names: readonly string[], isDone: boolean): Gap {
    const unread = names.filter((name) => this.named(name).some(({ day, text }) => day === undefined && text !== ''));
    if (unread.length > 0) return { remark: 'no-date', papers: unread };
    const ahead = isDone ? names.filter((name) => this.days(name).length > 0) : [];
    return ahead.length > 0 ? { remark: 'date-ahead', papers: ahead } : { remark: 'not-recorded', papers: names };
  }
}
