// The panel's page inside Google Sheets.
import { mountPanel } from '../../panel/panel';
import { googleHost } from './googleHost';

mountPanel(googleHost);
