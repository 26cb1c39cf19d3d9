// How many calls of our functions each sheet holds, and what a call costs.
import type { CheckReport } from '../workbook/check/checkWorkbook';

export function CheckedCalls({ report: { calls, callsInAll } }: { readonly report: CheckReport }) {
  return (
    <>
      <h3>Calls of our functions</h3>
      <table class="calls">
        <thead>
          <tr>
            <th scope="col">Sheet</th>
            <th scope="col" class="figure">
              Calls
            </th>
          </tr>
        </thead>
        <tbody>
          {calls.map(({ sheet, calls: count }) => (
            <tr key={sheet}>
              <td>{sheet}</td>
              <td class="figure">{count}</td>
            </tr>
          ))}
          <tr class="sum">
            <td>Total</td>
            <td class="figure">{callsInAll}</td>
          </tr>
        </tbody>
      </table>
      {calls.map(({ sheet, advice }) => advice !== undefined && <p key={sheet}>{`${sheet}: ${advice}`}</p>)}
      <p class="faint">
        In Google Sheets a call takes about half a second, up to 30 at a time, whenever a cell that it reads changes. One call over a column costs as
        much as one over a cell. In the local workbook calls cost next to nothing.
      </p>
    </>
  );
}
