// Every key of the sheets, one a line, so that a key that comes, goes or is reworded shows in a change of keys.generated.txt.
import { sheetTemplates } from '../../sheets-templates';
import { drawn } from '../../sheets-templates/keys';
import { keysOf } from '../workbook/keys';

export const keyList = (): string =>
  sheetTemplates
    .map((template) => {
      const keys = [...(keysOf(template)?.ranges.keys() ?? [])].filter((key) => !key.startsWith(drawn));
      return keys.map((key) => `${template.key}.${key}\n`).join('');
    })
    .join('');
