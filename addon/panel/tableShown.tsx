// A table before it is written: what its check says, its curves, every row as it will stand, and where.
import { useMemo } from 'preact/hooks';
import type { TypedTable } from '../../core/manual/columns';
import { scatterPicture } from '../pictures/scatterPicture';
import { tableCurves } from '../pictures/tableCurves';
import type { TablePlan } from '../workbook/aircraft/tablePlan';

/** Pixels, as the panel shows them. */
const curveSize = { width: 268, height: 250 };

function Curves({ typed }: { readonly typed: TypedTable }) {
  const pictures = useMemo(() => tableCurves(typed).map((request) => scatterPicture(request, curveSize)), [typed]);
  return (
    <>
      {pictures.map((svg, index) => (
        // The pictures escape every text they are given.
        <div key={index} class="picture small" dangerouslySetInnerHTML={{ __html: svg }} />
      ))}
    </>
  );
}

/** Columns in which nothing stands are left out. */
function Rows({ shown }: Pick<TablePlan, 'shown'>) {
  const [head = [], ...body] = shown;
  const used = head.flatMap((_, index) => (body.some((line) => (line[index] ?? '') !== '') ? [index] : []));
  return (
    <div class="scroll rows" role="region" aria-label="Every row as it will stand" tabIndex={0}>
      <table class="grid">
        <thead>
          <tr>
            {used.map((index) => (
              <th key={index} scope="col">
                {String(head[index])}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {body.map((line, row) => (
            <tr key={row}>
              {used.map((index) => (
                <td key={index} class={typeof line[index]}>
                  {String(line[index] ?? '')}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

export function TableShown({ plan }: { readonly plan: TablePlan }) {
  return (
    <>
      <h3>The table, looked over</h3>
      <p class={plan.verdict === 'OK' ? '' : 'problem'}>
        <strong>{plan.verdict}</strong> {plan.reasons}. Compare every curve with the manual: a small slip shows in none of them.
      </p>
      {plan.typed !== undefined && <Curves typed={plan.typed} />}
      <h3>Every row as it will stand</h3>
      <Rows shown={plan.shown} />
      {plan.rowsIn !== undefined && (
        <p>
          The list is too short: {plan.rowsIn.count} rows are put in above row {plan.rowsIn.row} of "{plan.rowsIn.sheet}" first, in every list there.
          The undo takes them out again.
        </p>
      )}
      <p>
        {plan.rows} rows go into {plan.place}. Nothing of another aircraft is touched.
      </p>
    </>
  );
}
