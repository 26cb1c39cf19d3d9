// The whole of a sheet as a form: what stands on top, then its sections, what is judged first.
import type { Form } from './form';
import { Parts, Section } from './parts';

export function SheetForm({ form }: { readonly form: Form }) {
  const { top, sections } = form.pocket;
  const judged = sections.filter(({ title }) => title === 'Judged');
  return (
    <>
      {/* Of the trip, the verdict and its reasons stand above already. */}
      <Parts form={form} parts={judged.length === 0 ? top : top.filter((part) => part.kind === 'said' && part.cell.style === 'subtitle')} />
      {[...judged, ...sections.filter((one) => !judged.includes(one))].map((section) => (
        <Section key={section.title} form={form} section={section} />
      ))}
    </>
  );
}
