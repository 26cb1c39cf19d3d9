// Which of the dated copies of a workbook may go: the ten newest are kept, and of those before them one a week.

const newestKept = 10;
const week = 7 * 24 * 60 * 60 * 1000;

/** `backups`: the newest first, `made` in milliseconds of UTC. Those that may go. */
export function spareBackups<Backup extends { readonly made: number }>(backups: readonly Backup[]): Backup[] {
  const weeks = new Set<number>();
  return backups.slice(newestKept).filter(({ made }) => {
    const number = Math.floor(made / week);
    const first = !weeks.has(number);
    weeks.add(number);
    return !first;
  });
}
