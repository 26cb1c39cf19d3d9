// What it takes to insert every sheet into a Google document, counted by the double of its services.
import type { GoogleFiles } from '../../addon/build/build';
import { sheetTemplates } from '../../sheets-templates';
import { bareContext } from '../bundle/bareContext';
import { Double } from '../google/double/services';
import { met, type Section } from './table';

const target = 80;

export function insertion(files: GoogleFiles): Section {
  const double = new Double('Etc/UTC', { panel: files['panel.html'] });
  bareContext(files['Code.js'], double.globals()).call('insertEverySheet');
  const sheets = double.document.sheets.length - 1;
  if (sheets !== sheetTemplates.length) throw new Error(`${sheets} sheets were inserted, not ${sheetTemplates.length}`);
  const { recorder } = double;
  const calls = recorder.count('document');
  return {
    title: `Service calls to insert all ${sheets} sheets into an empty document`,
    heads: ['what', 'measured', 'target', 'measured / target', ''],
    rows: [
      ['calls that read or change the document', String(calls), String(target), (calls / target).toFixed(2), met(calls <= target)],
      ['calls that only name a range', String(recorder.count('handle')), '', '', ''],
      ['calls of builders in memory', String(recorder.count('builder')), '', '', ''],
    ],
    notes: ['Counted by the test double; what a call takes on the platform is not known from here.'],
  };
}
