// The page of npm start: its workbook is the file of the local server.
import { offerOlderCopies } from './olderCopies';
import { serverKeeper } from './serverKeeper';
import { startPage } from './startPage';

void startPage(serverKeeper).then((started) => started !== undefined && offerOlderCopies(started));
