// Every value of an aircraft, list by list, as it stands or will be written.
import { inWords } from '../workbook/foundText';
import type { CellValue } from '../workbook/snapshot';
import { aircraftLists, type AircraftRows } from '../workbook/aircraft/wholeAircraft';

interface ShownListProps {
  readonly title: string;
  /** Headings by key, in the order of the sheet. */
  readonly heads: ReadonlyMap<string, string>;
  readonly rows: readonly Readonly<Record<string, CellValue>>[];
}

/** A day is a serial number in its cell. */
const shownValue = (key: string, value: CellValue = ''): string => (key === 'day' ? inWords(value) : String(value));

function ShownList({ title, heads, rows }: ShownListProps) {
  const used = [...heads].filter(([key]) => rows.some((row) => row[key] !== undefined));
  return (
    <>
      <h4>
        {title}, {rows.length === 1 ? '1 row' : `${rows.length} rows`}
      </h4>
      <div class="scroll rows" role="region" aria-label={`Every value: ${title}`} tabIndex={0}>
        <table class="grid">
          <thead>
            <tr>
              {used.map(([key, head]) => (
                <th key={key} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((row, index) => (
              <tr key={index}>
                {used.map(([key]) => (
                  <td key={key} class={typeof row[key]}>
                    {shownValue(key, row[key])}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
}

export function ShownAircraft({ lists, heads }: { readonly lists: AircraftRows; readonly heads: ReadonlyMap<string, ReadonlyMap<string, string>> }) {
  return (
    <>
      {aircraftLists.map(({ key, title }) => {
        const rows = lists[key] ?? [];
        return rows.length === 0 ? (
          <p key={key} class="faint">
            {title}: none.
          </p>
        ) : (
          <ShownList key={key} title={title} heads={heads.get(key) ?? new Map()} rows={rows} />
        );
      })}
    </>
  );
}
