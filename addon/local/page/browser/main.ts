// The page from any web host: its workbooks are kept by the browser, and the page works without a network.
import { startPage } from '../startPage';
import { browserKeeper } from './browserKeeper';
import { workOffline } from './offline';
import { tellSecondTab } from './twoTabs';
import { offerWorkbooks } from './workbooks';

void startPage(browserKeeper).then((started) => {
  offerWorkbooks(started);
  tellSecondTab();
  workOffline(started);
});
