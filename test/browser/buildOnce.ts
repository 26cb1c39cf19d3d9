// Before the browser tests, which run side by side: both pages are built once, so that no test builds while another serves.
import { join } from 'node:path';
import { buildPage } from '../../addon/local/buildPage';
import { publishPage } from '../../addon/local/publishPage';
import { root } from './support';

export const publishedFolder = join(root, 'build/published');

export default async function buildOnce(): Promise<void> {
  await buildPage(root);
  await publishPage(root, publishedFolder);
}
