// The page of npm start: its workbook is the file of the local server.
import { serverKeeper } from './serverKeeper';
import { startPage } from './startPage';

void startPage(serverKeeper);
