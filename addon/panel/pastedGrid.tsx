// Pasted text as it was read, line by line: numbers as they are taken, and in words what is not.
import type { PastedCell, PastedRow } from '../workbook/pasted/readPasted';

function shownCell(cell: PastedCell): string {
  switch (cell.kind) {
    case 'number':
      return [cell.unit === 'ISA' ? `ISA ${cell.value}` : `${cell.value}`, cell.unit === 'ISA' || cell.unit === 'SL' ? '' : cell.unit, cell.marks]
        .filter((part) => part !== '')
        .join(' ');
    case 'open':
      return `${cell.thousands} or ${cell.decimals}?`;
    case 'hole':
      return '\u2013';
    case 'words':
      return cell.text;
    case 'held':
      return '?';
  }
}

export function PastedGrid({ rows }: { readonly rows: readonly PastedRow[] }) {
  return (
    <div class="scroll rows" role="region" aria-label="The text as it was read" tabIndex={0}>
      <table class="grid">
        <tbody>
          {rows.map(({ line, cells }) => (
            <tr key={line}>
              <th scope="row">{line}</th>
              {cells.map((cell, index) => (
                <td key={index} class={cell.kind}>
                  {shownCell(cell)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
