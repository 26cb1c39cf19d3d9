// The views of the panel as tabs: arrow keys, Home and End move between them, Tab leaves them. A view is built when it is
// first shown and kept from then on, so that a report or a picture is still there on coming back.
import type { VNode } from 'preact';
import { useRef, useState } from 'preact/hooks';

export interface TabEntry {
  readonly name: string;
  readonly label: string;
  readonly view: () => VNode;
}

const steps: Readonly<Record<string, (index: number, count: number) => number>> = {
  ArrowRight: (index, count) => (index + 1) % count,
  ArrowLeft: (index, count) => (index + count - 1) % count,
  Home: () => 0,
  End: (_, count) => count - 1,
};

interface TabsProps {
  readonly tabs: readonly [TabEntry, ...TabEntry[]];
}

export function Tabs({ tabs }: TabsProps) {
  const [shown, setShown] = useState(tabs[0].name);
  const opened = useRef(new Set<string>());
  opened.current.add(shown);
  const list = useRef<HTMLDivElement>(null);
  const views = useRef<HTMLDivElement>(null);
  const show = (name: string): void => {
    setShown(name);
    // Scrolled down in one view, another still begins at its top: right below the tabs, which stay in sight.
    const above = views.current?.offsetTop ?? 0;
    const held = list.current?.offsetHeight ?? 0;
    if (window.scrollY > above - held) window.scrollTo(0, above - held);
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const step = steps[event.key];
    const next =
      step === undefined
        ? undefined
        : tabs[
            step(
              tabs.findIndex(({ name }) => name === shown),
              tabs.length,
            )
          ];
    if (next === undefined) return;
    event.preventDefault();
    show(next.name);
    list.current?.querySelector<HTMLElement>(`#tab-${next.name}`)?.focus();
  };
  return (
    <main>
      <div class="tabs" role="tablist" aria-label="Parts of the panel" ref={list} onKeyDown={onKeyDown}>
        {tabs.map(({ name, label }) => (
          <button
            key={name}
            id={`tab-${name}`}
            type="button"
            role="tab"
            aria-selected={name === shown}
            aria-controls={`view-${name}`}
            tabIndex={name === shown ? 0 : -1}
            onClick={() => show(name)}
          >
            {label}
          </button>
        ))}
      </div>
      <div class="views" ref={views}>
        {tabs.map(({ name, view }) => (
          <div key={name} id={`view-${name}`} role="tabpanel" aria-labelledby={`tab-${name}`} hidden={name !== shown}>
            {opened.current.has(name) && view()}
          </div>
        ))}
      </div>
    </main>
  );
}
