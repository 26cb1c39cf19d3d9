// The top-level functions of Code.js that are not sheet functions: what Apps Script calls by name (triggers, menu items,
// the panel's door). Anything at the top level can also be typed as a formula, so there are few and none is a helper.
import { everySheetCommand, panelCommand, sheetCommand } from '../google/commandNames';
import { sheetTemplates } from '../../sheets-templates';

interface HostFunction {
  readonly name: string;
  readonly parameters: readonly string[];
  readonly comment: string;
  /** What it does, `bundle` being the global of the bundled code. */
  readonly body: (bundle: string) => string;
}

export const hostFunctions: readonly HostFunction[] = [
  { name: 'onOpen', parameters: [], comment: 'Builds the menu when the document opens.', body: (bundle) => `${bundle}.onOpen();` },
  { name: 'onInstall', parameters: [], comment: 'Builds the menu at once after installing.', body: (bundle) => `${bundle}.onInstall();` },
  { name: panelCommand, parameters: [], comment: 'Menu: opens the panel.', body: (bundle) => `${bundle}.openPanel();` },
  { name: everySheetCommand, parameters: [], comment: 'Menu: inserts every sheet.', body: (bundle) => `${bundle}.insertEverySheet();` },
  ...sheetTemplates.map(({ key, name }) => ({
    name: sheetCommand(key),
    parameters: [],
    comment: `Menu: inserts ${name}.`,
    body: (bundle: string): string => `${bundle}.insertOneSheet(${JSON.stringify(key)});`,
  })),
  { name: 'answerPanel', parameters: ['question', 'given', 'run'], comment: 'Answers the panel.', body: (bundle) => `return ${bundle}.answerPanel(question, given, run);` },
  { name: 'attendRun', parameters: ['given'], comment: 'Tells the panel how far a change is, or stops it.', body: (bundle) => `return ${bundle}.attendRun(given);` },
];

export const hostSource = (bundle: string): string =>
  hostFunctions.map(({ name, parameters, comment, body }) => `/** ${comment} */\nfunction ${name}(${parameters.join(',')}){${body(bundle)}}\n`).join('');
