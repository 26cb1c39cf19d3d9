// The picture that belongs to the selected row, drawn when asked: no host tells the panel of a new selection.
import { useRef, useState } from 'preact/hooks';
import { selectedPicture, type SelectedPicture } from '../pictures/selectedPicture';
import { AskButton } from './askButton';
import { useAsking, type Said } from './asking';
import { FileLink, type OwnFile } from './fileLink';
import type { PanelHost } from './host';
import { localTime } from './localToday';
import { OutcomeLine } from './outcomeLine';
import { pageTemplates } from './pageTemplates';

interface Drawn {
  readonly of: string;
  /** Of the user's clock. */
  readonly at: string;
  readonly file: OwnFile;
}

/** Pictures are drawn at the size at which they are shown, so that their text keeps its size. */
const [usualWidth, heightForWidth] = [268, 1.3];

/** Hold: Descent and hold card, row 54, as the name of a file. */
const fileName = (of: string): string =>
  `${of
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')}.svg`;

/** The sheet in sight is read soonest; every sheet only where nothing can be drawn from that one, since its row may read others. */
async function pictureFrom(host: PanelHost, width: number): Promise<SelectedPicture> {
  const size = { width, height: Math.round(width * heightForWidth) };
  const ofShown = selectedPicture(await host.ask('readWorkbook', { sheets: 'shown' }), pageTemplates(), size);
  return 'none' in ofShown ? selectedPicture(await host.ask('readWorkbook', { sheets: 'all' }), pageTemplates(), size) : ofShown;
}

export function PictureView({ host }: { readonly host: PanelHost }) {
  const asking = useAsking();
  const [drawn, setDrawn] = useState<Drawn>();
  const place = useRef<HTMLElement>(null);
  const draw = async (): Promise<Said> => {
    let next: Drawn | undefined;
    try {
      const picture = await pictureFrom(host, place.current?.clientWidth ?? usualWidth);
      if ('none' in picture) return picture.none;
      next = { of: picture.of, at: localTime(), file: { name: fileName(picture.of), type: 'image/svg+xml', text: picture.svg } };
      return { shown: `Drawn. ${picture.of}.` };
    } finally {
      // A picture of before stays in sight until the answer is there, and never beside one that says otherwise.
      setDrawn(next);
    }
  };
  return (
    <section ref={place}>
      <h2>Picture of the selected row</h2>
      <p>Select a row of a hold, a descent, a loading or a recency item. It is drawn from its cells as they are now.</p>
      <AskButton look="main" asking={asking} ask={() => asking.run('Reading the sheet.', draw)}>
        Draw the selected row
      </AskButton>
      {drawn !== undefined && (
        <figure>
          {/* The pictures escape every text they are given. */}
          <div class="picture" dangerouslySetInnerHTML={{ __html: drawn.file.text }} />
          <figcaption>{drawn.of}</figcaption>
          <p class="faint">As the cells were at {drawn.at}. Later changes show when you draw it again.</p>
          <FileLink file={drawn.file} label="Save the picture (SVG)" />
        </figure>
      )}
      <OutcomeLine outcome={asking.outcome} />
    </section>
  );
}
