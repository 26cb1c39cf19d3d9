// Starts the spreadsheet grid in the page: the engine's open presets, our functions registered, the workbook loaded.
import {
  ICommandService,
  LocaleType,
  LogLevel,
  mergeLocales,
  Univer,
  type Injector,
  type IWorkbookData,
  type Plugin,
  type PluginCtor,
} from '@univerjs/core';
import { FUniver } from '@univerjs/core/facade';
import * as engine from '@univerjs/engine-formula';
import { UniverSheetsConditionalFormattingPreset } from '@univerjs/preset-sheets-conditional-formatting';
import conditionalFormattingWords from '@univerjs/preset-sheets-conditional-formatting/locales/en-US';
import { CalculationMode, UniverSheetsCorePreset } from '@univerjs/preset-sheets-core';
import coreWords from '@univerjs/preset-sheets-core/locales/en-US';
import { UniverSheetsDataValidationPreset } from '@univerjs/preset-sheets-data-validation';
import dataValidationWords from '@univerjs/preset-sheets-data-validation/locales/en-US';
import { UniverSheetsDrawingPreset } from '@univerjs/preset-sheets-drawing';
import drawingWords from '@univerjs/preset-sheets-drawing/locales/en-US';
import { UniverSheetsHyperLinkPreset } from '@univerjs/preset-sheets-hyper-link';
import hyperLinkWords from '@univerjs/preset-sheets-hyper-link/locales/en-US';
import { UniverSheetsNotePreset } from '@univerjs/preset-sheets-note';
import noteWords from '@univerjs/preset-sheets-note/locales/en-US';
import { TriggerCalculationController } from '@univerjs/sheets-formula';
import '@univerjs/preset-sheets-core/lib/index.css';
import '@univerjs/preset-sheets-conditional-formatting/lib/index.css';
import '@univerjs/preset-sheets-data-validation/lib/index.css';
import '@univerjs/preset-sheets-drawing/lib/index.css';
import '@univerjs/preset-sheets-hyper-link/lib/index.css';
import '@univerjs/preset-sheets-note/lib/index.css';
import { registry } from '../../../functions/registry/index.generated';
import { localToday } from '../../panel/localToday';
import { engineFunctions } from '../engine/adapter';
import { patchEngine } from '../engine/patchEngine';
import { patchWait } from '../engine/patchWait';
import type { CellErrors } from '../engine/cellErrors';
import { functionHelp } from './functionHelp';
import { keepLists } from './fullListNotice';
import { keepFormulas } from './keepFormulas';
import { patchPainting } from './patchPainting';
import { keepTypingPlain } from './plainTyping';
import { patchTints } from './patchTints';

/** The grid tells how far it is with these, and has no words for them itself. */
const progressWords = {
  'sheets-formula': {
    progress: {
      analyzing: 'Reading the formulas',
      calculating: 'Calculating',
      'array-analysis': 'Reading the columns',
      'array-calculation': 'Calculating',
      done: 'Done',
    },
  },
};

interface Preset {
  readonly plugins: readonly (PluginCtor<Plugin> | [PluginCtor<Plugin>, unknown])[];
}

/** Two presets may bring one plugin; the later settings win, as in the engine's own loader (whose package we avoid). */
function registerPresets(univer: Univer, presets: readonly Preset[]): void {
  const plugins = new Map<string, readonly [PluginCtor<Plugin>, unknown]>();
  for (const entry of presets.flatMap(({ plugins: ofPreset }) => ofPreset)) {
    const [plugin, options] = Array.isArray(entry) ? entry : [entry, undefined];
    plugins.set(plugin.pluginName, [plugin, options]);
  }
  for (const [plugin, options] of plugins.values()) univer.registerPlugin(plugin, options as never);
}

export interface Grid {
  readonly api: FUniver;
  /** Hands out the grid's own services. */
  readonly injector: Injector;
  readonly keepFormulasOf: (workbook: Workbook) => void;
  readonly keepListsOf: (workbook: Workbook) => void;
}

export function startGrid(container: string, book: CellErrors): Grid {
  patchEngine(engine);
  patchPainting();
  patchTints();
  patchWait({ TriggerCalculationController }, engine);
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: {
      [LocaleType.EN_US]: mergeLocales(
        coreWords,
        conditionalFormattingWords,
        dataValidationWords,
        drawingWords,
        hyperLinkWords,
        noteWords,
        progressWords,
      ),
    },
    logLevel: LogLevel.ERROR,
  });
  keepTypingPlain(univer.__getInjector().get(ICommandService));
  const keepListsOf = keepLists(univer.__getInjector().get(ICommandService));
  const keepFormulasOf = keepFormulas(univer.__getInjector().get(ICommandService));
  registerPresets(univer, [
    UniverSheetsCorePreset({
      container,
      ribbonType: 'simple',
      formula: {
        function: engineFunctions(engine, registry, book, localToday),
        description: functionHelp(registry),
        initialFormulaComputing: CalculationMode.FORCED,
      },
    }) as Preset,
    UniverSheetsConditionalFormattingPreset() as Preset,
    // The search field of the choices takes the keyboard away and enters nothing: without it, what is typed is entered as anywhere else.
    UniverSheetsDataValidationPreset({ showSearchOnDropdown: false, showEditOnDropdown: false }) as Preset,
    UniverSheetsDrawingPreset() as Preset,
    UniverSheetsHyperLinkPreset() as Preset,
    UniverSheetsNotePreset() as Preset,
  ]);
  return { api: FUniver.newAPI(univer), injector: univer.__getInjector(), keepFormulasOf, keepListsOf };
}

export type Workbook = ReturnType<FUniver['createWorkbook']>;

export const loadWorkbook = (api: FUniver, data: IWorkbookData): Workbook => api.createWorkbook(data);
