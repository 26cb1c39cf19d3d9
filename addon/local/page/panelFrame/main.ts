// The panel's page in the local workbook.
import { mountPanel } from '../../../panel/panel';
import { connectToPage } from './localHost';

mountPanel(connectToPage());
