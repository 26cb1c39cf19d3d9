// The strictness of the double: every call on a service goes through here. Methods that the double does not have throw,
// calls that the authorisation mode forbids throw, and what was called is written down.

export type AuthMode = 'NONE' | 'LIMITED' | 'FULL' | 'CUSTOM_FUNCTION';

/**
 * builder: makes a rule, a style or a chart in memory. handle: names a range without reading or changing anything.
 * document: reads or changes the document. other: the user interface and the utilities.
 */
export type CallKind = 'builder' | 'handle' | 'document' | 'other';

export interface RecordedCall {
  readonly name: string;
  readonly kind: CallKind;
  /** What each argument is, as the reference of the services names it; of an array, what its first filled cell is. */
  readonly given: readonly string[];
}

/** Of the double's own classes the name that the reference gives them. */
function kindOf(value: unknown): string {
  if (value instanceof Doubled) return value.service;
  if (Array.isArray(value)) {
    for (const one of value as unknown[]) if (kindOf(one) !== 'null') return kindOf(one);
    return 'null';
  }
  if (typeof value === 'number') return Number.isInteger(value) ? 'Integer' : 'Number';
  return value === null ? 'null' : Object.prototype.toString.call(value).slice(8, -1);
}

/** Every class of the double; `kind` is what its calls count as, `handles` are those of its methods that reach nothing. */
export abstract class Doubled {
  abstract readonly service: string;
  readonly kind: CallKind = 'document';
  readonly handles: ReadonlySet<string> = new Set();
}

type Method = (this: unknown, ...given: unknown[]) => unknown;

/** Reading and menu building before the user has allowed anything. */
const allowedInNone = new Set(['SpreadsheetApp.getUi', 'Ui.createAddonMenu', 'Utilities.formatDate']);
/** Needs a click of the user: dialogs and sidebars. */
const needsFull = new Set(['Ui.showSidebar', 'Ui.alert', 'HtmlService.createHtmlOutputFromFile']);

export class Recorder {
  mode: AuthMode = 'FULL';
  readonly calls: RecordedCall[] = [];
  /** The document call with this number, counted from 1, fails as the platform does now and then. */
  failAt: number | undefined;
  private readonly proxies = new WeakMap<Doubled, unknown>();
  private readonly targets = new WeakMap<object, Doubled>();

  count(kind: CallKind): number {
    return this.calls.filter((call) => call.kind === kind).length;
  }

  /** What the code under test gets in place of the service's object. */
  wrap<Target extends Doubled>(target: Target): Target {
    const known = this.proxies.get(target);
    if (known !== undefined) return known as Target;
    const proxy = new Proxy(target, {
      get: (_, property) => this.property(target, property),
      set: (_, property) => {
        throw new Error(`${target.service}.${String(property)} cannot be set`);
      },
    });
    this.proxies.set(target, proxy);
    this.targets.set(proxy, target);
    return proxy;
  }

  private property(target: Doubled, property: string | symbol): unknown {
    if (typeof property === 'symbol' || property === 'toJSON') return undefined;
    const value = (target as unknown as Record<string, unknown>)[property];
    if (value === undefined || property in Object.prototype) throw new Error(`the double has no ${target.service}.${property}`);
    if (typeof value !== 'function') return value;
    return (...given: unknown[]) => this.run(target, property, value as Method, given);
  }

  private run(target: Doubled, name: string, method: Method, given: readonly unknown[]): unknown {
    const full = `${target.service}.${name}`;
    this.allow(target, name, full);
    const kind = target.handles.has(name) ? 'handle' : target.kind;
    const own = given.map((value) => this.in(value));
    this.calls.push({ name: full, kind, given: own.map(kindOf) });
    if (kind === 'document' && this.count('document') === this.failAt) throw new Error('Service Spreadsheets failed while accessing document.');
    return this.out(method.apply(target, own));
  }

  private allow(target: Doubled, name: string, full: string): void {
    const refuse = (): never => {
      throw new Error(`You do not have permission to call ${full} (${this.mode}).`);
    };
    if (this.mode === 'NONE' && !allowedInNone.has(full) && target.service !== 'Menu') refuse();
    if (this.mode === 'LIMITED' && needsFull.has(full)) refuse();
    if (this.mode === 'CUSTOM_FUNCTION' && !(name.startsWith('get') && name !== 'getUi') && target.service !== 'Utilities') refuse();
  }

  private out(value: unknown): unknown {
    if (value instanceof Doubled) return this.wrap(value);
    return Array.isArray(value) ? (value as unknown[]).map((one) => this.out(one)) : value;
  }

  private in(value: unknown): unknown {
    if (typeof value === 'object' && value !== null && this.targets.has(value)) return this.targets.get(value);
    return Array.isArray(value) ? (value as unknown[]).map((one) => this.in(one)) : value;
  }
}
