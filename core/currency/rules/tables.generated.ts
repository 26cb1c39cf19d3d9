// Written by npm run generate from the files of core/currency/rules/tables. Not to be edited.
import type { Authority } from './rule';

export const tableAuthorities: readonly Authority[] = [
 {
  "name": "Canada",
  "pilot": [
   {
    "kind": "days",
    "item": "five-year recency",
    "neededFor": "every flight",
    "paragraph": "CAR 401.05(1)(a)",
    "reading": "as pilot in command or co-pilot; every flight of the log is taken for one; a flight review and examination instead is not judged",
    "warnDays": 60,
    "within": {
     "months": 60
    },
    "tasks": [
     {
      "counts": {
       "of": "flights"
      },
      "needed": 1
     }
    ],
    "same": "all",
    "devices": [],
    "typesCountForClass": true
   },
   {
    "kind": "paper",
    "item": "recurrent training",
    "neededFor": "every flight",
    "paragraph": "CAR 401.05(2)(a)",
    "reading": "24 months to the same day; flight review, seminar, self-paced study programme or another of the seven ways of 421.05(2)",
    "warnDays": 60,
    "papers": [
     "recurrent training"
    ],
    "lasts": {
     "months": 24,
     "to": "day"
    }
   },
   {
    "kind": "days",
    "item": "passengers",
    "neededFor": "passengers",
    "paragraph": "CAR 401.05(2)(b)(i)(A)",
    "reading": "five take-offs and landings, by day or night; 6 months from the day after the same date (stricter reading); a simulator of level B, C or D counts",
    "warnDays": 14,
    "within": {
     "months": 6
    },
    "tasks": [
     {
      "counts": {
       "of": "landings"
      },
      "needed": 5
     },
     {
      "counts": {
       "of": "takeoffs"
      },
      "needed": 5
     }
    ],
    "same": "class",
    "devices": [
     "FFS"
    ],
    "typesCountForClass": true
   },
   {
    "kind": "days",
    "item": "passengers at night",
    "neededFor": "passengers at night",
    "paragraph": "CAR 401.05(2)(b)(i)(B)",
    "reading": "five take-offs and landings at night; 6 months from the day after the same date (stricter reading); a simulator of level B, C or D counts",
    "warnDays": 14,
    "within": {
     "months": 6
    },
    "tasks": [
     {
      "counts": {
       "of": "landings",
       "night": true
      },
      "needed": 5
     },
     {
      "counts": {
       "of": "takeoffs",
       "night": true
      },
      "needed": 5
     }
    ],
    "same": "class",
    "devices": [
     "FFS"
    ],
    "typesCountForClass": true
   },
   {
    "kind": "medical",
    "item": "medical",
    "neededFor": "every flight",
    "paragraph": "CAR 404.04(6)",
    "reading": "private pilot, aeroplane: to the end of the month of the examination; category 1 or 3",
    "warnDays": 45,
    "rules": [
     {
      "medicalClass": "3",
      "youngerThan": 40,
      "within": {
       "calendarMonths": 60
      }
     },
     {
      "medicalClass": "3",
      "within": {
       "calendarMonths": 24
      }
     },
     {
      "medicalClass": "1",
      "youngerThan": 40,
      "within": {
       "calendarMonths": 60
      }
     },
     {
      "medicalClass": "1",
      "within": {
       "calendarMonths": 24
      }
     }
    ],
    "privileges": [
     {
      "privilege": "private",
      "name": "private"
     }
    ],
    "least": "private"
   },
   {
    "kind": "paper",
    "item": "instrument check",
    "neededFor": "instrument flight",
    "paragraph": "AC 401-005",
    "reading": "to the end of the 12th month after the test or check; from the 13th on 6 h and 6 approaches in 6 months serve too, to the 24th, which is not judged here",
    "warnDays": 60,
    "papers": [
     "instrument check"
    ],
    "lasts": {
     "months": 12,
     "to": "month_end"
    }
   }
  ],
  "aircraft": []
 }
];
