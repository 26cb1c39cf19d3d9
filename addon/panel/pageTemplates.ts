// The sheets of today's version, out of the panel's own page. Unpacked when a view first needs them, then kept.
import type { SheetTemplate } from '../../sheets-templates/template';
import { unpackTemplates, type PackedTemplates } from '../workbook/packedTemplates';

let unpacked: readonly SheetTemplate[] | undefined;

export function pageTemplates(): readonly SheetTemplate[] {
  const text = document.getElementById('sheets')?.textContent;
  if (!text) throw new Error('The sheets of this version are missing from the panel. Reload the page, open the panel again and try once more.');
  unpacked ??= unpackTemplates(JSON.parse(text) as PackedTemplates);
  return unpacked;
}
