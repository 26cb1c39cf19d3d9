// The menu. Built in every authorisation mode, also before the user has allowed anything (AuthMode.NONE), so it touches
// no service but the user interface's menu, and reads nothing from the event.
import sheetNames from 'rampwright:sheet-names';
import { everySheetCommand, panelCommand, sheetCommand } from './commandNames';

export function onOpen(): void {
  const menu = SpreadsheetApp.getUi().createAddonMenu();
  menu.addItem('Open the panel', panelCommand);
  menu.addSeparator();
  menu.addItem('Insert every sheet', everySheetCommand);
  for (const { key, name } of sheetNames) menu.addItem(`Insert ${name}`, sheetCommand(key));
  menu.addToUi();
}

/** Installing from inside a document runs this in place of onOpen, so the menu is there at once. */
export function onInstall(): void {
  onOpen();
}
