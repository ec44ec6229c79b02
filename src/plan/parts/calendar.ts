/** A day of the calendar. */
export interface CalendarDay {
  /** By the Gregorian calendar. */
  readonly year: number;
  /** 1 to 12. */
  readonly month: number;
  /** 1 to 31. */
  readonly day: number;
}

const daysIn = { era: 146_097, century: 36_524, fourYears: 1461, year: 365 };

/** Days since 1 March of the year 0, so that a leap day is the last of its year. */
function dayNumber({ year, month, day }: CalendarDay): number {
  const since = month > 2 ? year : year - 1;
  const [centuries, fours] = [Math.floor(since / 100), Math.floor(since / 4)];
  const ofYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + day - 1;
  return 365 * since + fours - centuries + Math.floor(since / 400) + ofYear;
}

/**
 * The day so many days after one as `"2027-03-01"`, by the Gregorian calendar.
 *
 * @internal
 */
export function dayAfter(start: string, days: number): CalendarDay {
  const [year = 0, month = 1, day = 1] = start.split("-").map(Number);
  const number = dayNumber({ year, month, day }) + days;
  const era = Math.floor(number / daysIn.era);
  const ofEra = number - era * daysIn.era;
  const { fourYears, century } = daysIn;
  const yearOfEra = Math.floor(
    (ofEra - Math.floor(ofEra / (fourYears - 1)) + Math.floor(ofEra / century) - Math.floor(ofEra / (daysIn.era - 1))) /
      daysIn.year,
  );
  const ofYear = ofEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const shifted = Math.floor((5 * ofYear + 2) / 153);
  const found = shifted < 10 ? shifted + 3 : shifted - 9;
  return {
    year: yearOfEra + 400 * era + (found <= 2 ? 1 : 0),
    month: found,
    day: ofYear - Math.floor((153 * shifted + 2) / 5) + 1,
  };
}
