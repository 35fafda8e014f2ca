import ical, { ICalEventTransparency } from 'ical-generator';
import type { WorkEvent } from './work-event.js';

export interface CalendarHead {
  /** Id of the campus; with the key of an event it makes the UID. */
  readonly campusId: string;
  readonly name: string;
  /** ISO date of the data: equal data give equal bytes. */
  readonly dataDate: string;
}

/**
 * Events as RFC 5545 has it. All are of whole days and float: a day is a day wherever it is read, so
 * there is no time zone in them, and DTEND is the day after the last (3.6.1). They block no one's time.
 */
export function writeCalendar(events: readonly WorkEvent[], head: CalendarHead): Uint8Array {
  const calendar = ical({
    name: head.name,
    prodId: { company: 'campus-plan', product: 'work year', language: 'EN' },
  });
  for (const { description, endsBefore, key, kind, starts, summary } of events) {
    calendar.createEvent({
      id: `${key}@${head.campusId}.campus-plan`,
      stamp: atMidnight(head.dataDate),
      start: atMidnight(starts),
      end: atMidnight(endsBefore),
      allDay: true,
      summary,
      description,
      categories: [{ name: kind }],
      transparency: ICalEventTransparency.TRANSPARENT,
    });
  }
  return new TextEncoder().encode(calendar.toString());
}

function atMidnight(date: string): Date {
  return new Date(`${date}T00:00:00Z`);
}
