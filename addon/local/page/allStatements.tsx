// The button and the window from which the statements of all members go out at one press: one print job with a page each, or one zip with a file each.
import {
  memberStatements,
  statementFile,
  statementFileNames,
  statementPage,
  statementStyle,
  type MemberStatement,
} from '../../workbook/memberStatements';
import { localToday } from '../../panel/localToday';
import { element } from '../../pictures/svg';
import { showDialog } from './dialog';
import { download } from './download';
import { elementNamed } from './elements';
import type { LiveWorkbook } from './liveWorkbook';
import { notify, notifyFailure } from './notices';
import { printInstead } from './printSheet';

const pages = (statements: readonly MemberStatement[]): string =>
  element('style', {}, `@page { size: portrait; margin: 15mm; }${statementStyle}`) +
  statements.map((one) => statementPage(one, localToday())).join('');

async function saveZip(statements: readonly MemberStatement[]): Promise<void> {
  const { strToU8, zipSync } = await import('fflate');
  const names = statementFileNames(statements);
  const files = Object.fromEntries(statements.map((one, index) => [names[index] ?? '', strToU8(statementFile(one, localToday()))]));
  download(`Statements ${localToday()}.zip`, zipSync(files), 'application/zip');
  notify(`${statements.length} statements are in the zip, a file each. Take it apart before you send one: the zip holds everybody's.`);
}

interface Props {
  readonly statements: readonly MemberStatement[];
  readonly close: () => void;
}

function AllStatements({ statements, close }: Props) {
  const print = (): void => {
    close();
    printInstead(pages(statements));
  };
  const save = (): void => {
    close();
    void saveZip(statements).catch(notifyFailure);
  };
  const notWhole = statements.some((one) => one.notWhole);
  return (
    <>
      <h1>Statements of all members</h1>
      <p>
        {statements.length} members of Dues, each on a page of its own with nobody else's data.
        {notWhole && ' Some rows of Dues cannot be read or fall on nobody: see the foot of its lines first. Each statement says so.'}
      </p>
      <p class="choices">
        <button type="button" onClick={print}>
          Print all, a page each
        </button>
        <button type="button" onClick={save}>
          Save all, a file each (zip)
        </button>
        <button type="button" onClick={close}>
          Close
        </button>
      </p>
    </>
  );
}

async function show({ settled, snapshot }: LiveWorkbook): Promise<void> {
  await settled();
  const statements = memberStatements(snapshot('all'));
  if (statements.length === 0) throw new Error('Dues lists no member.');
  showDialog('Statements of all members', (close) => <AllStatements statements={statements} close={close} />);
}

export const offerStatements = (live: LiveWorkbook): void =>
  elementNamed('statements-button').addEventListener('click', () => void show(live).catch(notifyFailure));
