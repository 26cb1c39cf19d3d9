// What is said of the invented demonstration, only while one of its aircraft is in use: it must not print over an owner's own trip.
import { inventedAircraft } from './aircraft';

/** Formula text: whether the aircraft in use is one of the demonstration. */
const demoInUse = `OR(${inventedAircraft.map(({ name }) => `aircraft_in_use="${name}"`).join(',')})`;

/** Formula: the words while a demonstration aircraft is in use (or none can be, in a sheet that stands alone), then what is always said. */
export function whileDemo(words: string, always = ''): string {
  const said = always === '' ? words : `${words} `;
  return `=IFERROR(IF(${demoInUse},"${said}",""),"${said}")${always === '' ? '' : `&"${always}"`}`;
}
