// Developer metadata of the double: what a script writes on a sheet to know it again.
import { Doubled } from './recorder';
import type { FakeSheet } from './sheet';

export const visibilities = { PROJECT: {}, DOCUMENT: {} };

export class FakeMetadata extends Doubled {
  readonly service = 'DeveloperMetadata';
  readonly key: string;
  /** The script project that alone sees it; undefined where every one does. */
  readonly project: number | undefined;
  private readonly sheet: FakeSheet;
  private readonly value: string;

  constructor(sheet: FakeSheet, key: string, value: string, project?: number) {
    super();
    this.sheet = sheet;
    this.key = key;
    this.value = value;
    this.project = project;
  }

  getKey = (): string => this.key;
  getValue = (): string | null => this.value;
  getLocation = (): FakeMetadataLocation => new FakeMetadataLocation(this.sheet);

  remove(): void {
    const place = this.sheet.metadata.indexOf(this);
    if (place < 0) throw new Error('the developer metadata is gone already');
    this.sheet.metadata.splice(place, 1);
  }

  /** Not part of the service. */
  copyOn = (sheet: FakeSheet): FakeMetadata => new FakeMetadata(sheet, this.key, this.value, this.project);
}

export class FakeMetadataLocation extends Doubled {
  readonly service = 'DeveloperMetadataLocation';
  private readonly sheet: FakeSheet;

  constructor(sheet: FakeSheet) {
    super();
    this.sheet = sheet;
  }

  getSheet = (): FakeSheet | null => this.sheet;
}
