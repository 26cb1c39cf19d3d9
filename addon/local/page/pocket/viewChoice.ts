// Which view and which colours the user wants: by the width of the window and the device's own setting, until they choose otherwise.
import { useEffect, useState } from 'preact/hooks';

const viewMemory = 'rampwright-view';
const themeMemory = 'rampwright-colours';

/** Below this width a grid has no room. */
export const narrow = matchMedia('(max-width: 899px)');
const dark = matchMedia('(prefers-color-scheme: dark)');

export function wantsPocket(): boolean {
  const chosen = localStorage.getItem(viewMemory);
  return chosen === null ? narrow.matches : chosen === 'pocket';
}

export function showPocket(wanted: boolean): void {
  localStorage.setItem(viewMemory, wanted ? 'pocket' : 'grid');
  window.dispatchEvent(new Event('rampwright-view'));
}

export const themes = { device: "The device's colours", day: 'Day, high contrast', night: 'Night, dim, no red' } as const;

export function useTheme(): readonly [theme: string, set: (theme: string) => void] {
  const [theme, setTheme] = useState(localStorage.getItem(themeMemory) ?? 'device');
  useEffect(() => {
    localStorage.setItem(themeMemory, theme);
    const show = (): void => {
      const night = theme === 'night' || (theme === 'device' && dark.matches);
      document.documentElement.dataset['colours'] = night ? 'night' : 'day';
    };
    show();
    dark.addEventListener('change', show);
    return () => dark.removeEventListener('change', show);
  }, [theme]);
  return [theme, setTheme];
}
