// The views of the panel as tabs: arrow keys, Home and End move between them, Tab leaves them.
import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';

export interface TabEntry<Name extends string> {
  readonly name: Name;
  readonly label: string;
}

interface TabsProps<Name extends string> {
  readonly tabs: readonly TabEntry<Name>[];
  readonly shown: Name;
  readonly show: (name: Name) => void;
  readonly children: ComponentChildren;
}

const steps: Readonly<Record<string, (index: number, count: number) => number>> = {
  ArrowRight: (index, count) => (index + 1) % count,
  ArrowLeft: (index, count) => (index + count - 1) % count,
  Home: () => 0,
  End: (_, count) => count - 1,
};

export function Tabs<Name extends string>({ tabs, shown, show, children }: TabsProps<Name>) {
  const list = useRef<HTMLDivElement>(null);
  const onKeyDown = (event: KeyboardEvent): void => {
    const step = steps[event.key];
    const next = step === undefined ? undefined : tabs[step(tabs.findIndex(({ name }) => name === shown), tabs.length)];
    if (next === undefined) return;
    event.preventDefault();
    show(next.name);
    list.current?.querySelector<HTMLElement>(`#tab-${next.name}`)?.focus();
  };
  return (
    <>
      <div class="tabs" role="tablist" aria-label="Parts of the panel" ref={list} onKeyDown={onKeyDown}>
        {tabs.map(({ name, label }) => (
          <button key={name} id={`tab-${name}`} type="button" role="tab" aria-selected={name === shown} aria-controls="view" tabIndex={name === shown ? 0 : -1} onClick={() => show(name)}>
            {label}
          </button>
        ))}
      </div>
      <main id="view" role="tabpanel" aria-labelledby={`tab-${shown}`} tabIndex={-1}>
        {children}
      </main>
    </>
  );
}
