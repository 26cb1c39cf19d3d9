// Sheet functions of what is used up by the minute beside fuel: oxygen wanted by altitude, de-icing fluid.
import { oxygenRules, oxygenWanted, type OxygenRules } from '../../core/route/oxygen';
import { folding, mapping, result } from '../registry/declaration';
import { column, optional } from '../registry/modifiers';
import { durationMinutes } from '../registry/readDate';
import { number } from '../registry/readNumber';
import { choice } from '../registry/readText';

const subject = 'Route';
const longestMinutes = 2880;
const most = 1_000_000;
const people = (help: string, minimum: number) => number({ unit: 'people', minimum, maximum: 30, whole: true, help });

export const OXYGEN_WANTED = folding({
  name: 'OXYGEN_WANTED',
  subject,
  summary: 'Minutes of oxygen that the crew and the passengers want by the altitudes of a flight, and the litres.',
  parameters: {
    altitude_ft: column(number({ unit: 'feet', minimum: -1500, maximum: 60000, help: 'Cabin pressure altitudes of the flight, one a row.' })),
    minutes: column(durationMinutes({ maximum: longestMinutes, help: 'Time at each.' })),
    rules: choice<OxygenRules>({ words: ['FAA', 'EASA'], help: 'FAA (14 CFR 91.211) or EASA (NCO.OP.190(b)).' }),
    crew: people('Crew who must have it.', 1),
    passengers: people('Passengers.', 0),
    litres_per_minute: optional(
      number({ unit: 'litres a minute', minimum: 0, aboveMinimum: true, maximum: 20, help: 'Flow of one person.' }),
      undefined,
      'no litres are worked out',
    ),
  },
  results: {
    crew_minutes: result('minutes', 'For each of the crew.'),
    passenger_minutes: result('minutes', 'For each passenger.'),
    person_minutes: result('minutes', 'Of all together.'),
    litres: result('litres', 'Of all together; blank without litres_per_minute.'),
  },
  sources: ['cfr-91-211', 'part-nco-oxygen'],
  notes:
    'FAA: above 12,500 ft up to 14,000 ft the crew for the time beyond 30 minutes, above 14,000 ft the crew, above 15,000 ft everybody. EASA, where the pilot cannot determine what the lack of it does: from 10,000 ft up to 13,000 ft the crew beyond 30 minutes, above 13,000 ft everybody. ' +
    'The 30 minutes are counted once in a flight (the careful reading). Pressurised aircraft are not in it. OXYGEN_ENDURANCE tells how long a bottle lasts.',
  examples: [
    {
      arguments: [[[13000], [14500], [16000]], [[45], [20], [10]], 'FAA', 1, 2, 1],
      gives: [[45, 10, 65, 65]],
      source: '14 CFR 91.211(a), by hand: 15 + 20 + 10 minutes for the crew, 10 for each passenger',
      formula: '=OXYGEN_WANTED(A2:A4, B2:B4, "FAA", 1, 2, 1)',
    },
    {
      arguments: [[[11000], [13500]], [[40], [5]], 'EASA', 1, 1],
      gives: [[15, 5, 20, '']],
      source: 'NCO.OP.190(b), by hand: 10 + 5 minutes for the crew, 5 for the passenger',
      formula: '=OXYGEN_WANTED(A2:A3, B2:B3, "EASA", 1, 1)',
    },
  ],
  compute: ({ altitude_ft, minutes, rules, crew, passengers, litres_per_minute }) => {
    const flown = altitude_ft.map((altitudeFeet, index) => ({ altitudeFeet, minutes: minutes[index] ?? 0 }));
    const { crewMinutes, passengerMinutes } = oxygenWanted(oxygenRules[rules], flown);
    const all = crewMinutes * crew + passengerMinutes * passengers;
    return {
      crew_minutes: crewMinutes,
      passenger_minutes: passengerMinutes,
      person_minutes: all,
      litres: litres_per_minute === undefined ? '' : all * litres_per_minute,
    };
  },
});

export const DEICING_FLUID = mapping({
  name: 'DEICING_FLUID',
  subject,
  summary: 'How long de-icing fluid lasts, and whether for the minutes in which it may be wanted.',
  parameters: {
    quantity: number({ unit: '', minimum: 0, maximum: most, help: 'Fluid on board, in any unit.' }),
    flow_per_hour: number({ unit: 'an hour', minimum: 0, aboveMinimum: true, maximum: most, help: 'Flow of the setting used, in the same unit.' }),
    minutes_wanted: durationMinutes({ maximum: longestMinutes, help: 'Minutes in which it may be wanted.' }),
    keep: optional(number({ unit: '', minimum: 0, maximum: most, help: 'What is to be left.' }), 0, 'nothing'),
  },
  results: {
    minutes: result('minutes', 'Until only what is kept is left; negative where that is not there now.'),
    left: result('as the quantity', 'After the minutes wanted; negative is what is missing.'),
    verdict: result('', 'OK where it lasts, else NO.'),
  },
  sources: ['common-practice'],
  notes:
    'Quantity over flow, exact for a steady flow. The flow of each setting and the least quantity for flight in icing are in the aircraft manual.',
  examples: [{ arguments: [10, 4, 90, 2], gives: [[120, 4, 'OK']], source: 'By hand: 8 to use at 4 an hour; 10 less 6' }],
  compute: ({ quantity, flow_per_hour, minutes_wanted, keep }) => {
    const left = quantity - (flow_per_hour * minutes_wanted) / 60;
    return { minutes: ((quantity - keep) / flow_per_hour) * 60, left, verdict: left >= keep - 1e-9 * quantity ? 'OK' : 'NO' };
  },
});
