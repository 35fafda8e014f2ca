import { readFileSync } from 'node:fs';
import ICAL from 'ical.js';
import { beforeAll, describe, expect, test } from 'vitest';
import type { CampusFile } from '#contracts/campus-file.schema.js';
import type { PlanFile } from '#contracts/plan-file.js';
import { constructedPlanFile } from '../support/cli/constructed-plan.js';
import { SMALL_CAMPUS } from '../support/cli/small-campus.js';
import { exported } from '../support/exchange/merged.js';

const text = readFileSync(SMALL_CAMPUS, 'utf8');
const file = JSON.parse(text) as CampusFile;

let plan: PlanFile;
beforeAll(() => {
  plan = constructedPlanFile(text);
});

async function calendarText(of: PlanFile = plan, year = 'FY2028'): Promise<string> {
  return new TextDecoder().decode(await exported({ file, format: 'ics', plan: of, year }));
}

/** The events as another library reads them. */
async function events(of: PlanFile = plan, year = 'FY2028') {
  const calendar = new ICAL.Component(ICAL.parse(await calendarText(of, year)) as never[]);
  return calendar.getAllSubcomponents('vevent').map((component) => {
    const { endDate, startDate, summary, uid } = new ICAL.Event(component);
    return {
      uid,
      summary,
      starts: startDate.toString(),
      ends: endDate.toString(),
      isDate: startDate.isDate,
    };
  });
}

/** RFC 5545, section 3.6.1, typed from the document: an event of whole days, its end not included. */
const RFC_5545_3_6_1 = `BEGIN:VCALENDAR\r
VERSION:2.0\r
PRODID:-//typed//EN\r
BEGIN:VEVENT\r
UID:20070423T123432Z-541111@example.com\r
DTSTAMP:20070423T123432Z\r
DTSTART;VALUE=DATE:20070628\r
DTEND;VALUE=DATE:20070709\r
SUMMARY:Festival International de Jazz de Montreal\r
TRANSP:TRANSPARENT\r
END:VEVENT\r
END:VCALENDAR\r\n`;

describe('the calendar of a work year', () => {
  test('has whole days that float, the end being the day after the last', async () => {
    const read = await events();
    expect(read.every(({ isDate }) => isDate)).toBe(true);
    const prepare = read.find(({ uid }) => uid.startsWith('prepare-S-1@'));
    expect(prepare).toMatchObject({ starts: '2027-09-01', ends: '2027-12-01' });
    const plant = read.find(({ uid }) => uid.startsWith('plant-S-1@'));
    expect(plant).toMatchObject({ starts: '2028-03-01', ends: '2028-06-01' });
    const order = read.find(({ uid }) => uid.startsWith('order-fall-FY2028@'));
    expect(order).toMatchObject({ starts: '2027-08-04', ends: '2027-08-05' });
  });

  test('is of the form of the example in RFC 5545, section 3.6.1, which the other library reads so', async () => {
    const example = new ICAL.Component(ICAL.parse(RFC_5545_3_6_1) as never[]);
    const event = new ICAL.Event(example.getFirstSubcomponent('vevent')!);
    expect(event.startDate.isDate && event.endDate.toString()).toBe('2007-07-09');
    const own = (await calendarText()).replaceAll('\r\n ', '');
    const lines = ['UID:', 'DTSTAMP:\\d{8}T\\d{6}Z', 'DTSTART;VALUE=DATE:', 'DTEND;VALUE=DATE:'];
    for (const line of [...lines, 'SUMMARY:', 'TRANSP:TRANSPARENT']) {
      const count = (inText: string) => inText.match(new RegExp(`^${line}`, 'gm'))?.length;
      expect(count(RFC_5545_3_6_1)).toBe(1);
      expect(count(own)).toBe((await events()).length);
    }
  });

  test('breaks its lines as RFC 5545, section 3.1, has it', async () => {
    const lines = (await calendarText()).split('\r\n');
    expect(lines.some((line) => line.includes('\n'))).toBe(false);
    expect(Math.max(...lines.map((line) => Buffer.byteLength(line)))).toBeLessThanOrEqual(75);
  });

  test('tells what the plan has people do, with the caution beside it', async () => {
    const read = (await calendarText()).replaceAll('\r\n ', '');
    expect(read).toMatch(/SUMMARY:Care for planted sites: [\d\\,]+ hours/);
    expect(read).toMatch(/DESCRIPTION:Before any digging call the public one-call center/);
    const kinds = new Set((await events()).map(({ uid }) => uid.split('-')[0]));
    expect([...kinds].sort()).toEqual(['care', 'harvest', 'order', 'plant', 'prepare']);
  });

  test('keeps the identity of an event whose year changes, so that no calendar shows it twice', async () => {
    const later = structuredClone(plan);
    const placed = later.plan.placements.find(({ site }) => site === 'S-1')!;
    placed.year = 'FY2029';
    const of = async (one: PlanFile, year: string) =>
      (await events(one, year)).filter(({ uid }) => uid.startsWith('prepare-S-1@'));
    const [before] = await of(plan, 'FY2028');
    const [after] = await of(later, 'FY2029');
    expect(await of(later, 'FY2028')).toEqual([]);
    expect(after?.uid).toBe(before?.uid);
    expect(after?.starts).toBe('2028-09-01');
  });

  test('gives every event an identity of its own, and equal plans equal bytes', async () => {
    const uids = (await events()).map(({ uid }) => uid);
    expect(new Set(uids).size).toBe(uids.length);
    expect(await calendarText()).toBe(await calendarText());
  });

  test('asks for a position its lead time before the season in which it starts', async () => {
    const [position] = file.positions;
    const hiring = structuredClone(plan);
    hiring.plan.hires = [{ year: 'FY2030', position: position!.id, count: 1 }];
    expect(position).toMatchObject({ startSeason: 'fall', leadMonths: 10 });
    const asks = (await events(hiring, 'FY2029')).filter(({ uid }) => uid.startsWith('ask-'));
    expect(asks).toMatchObject([{ starts: '2028-11-01', ends: '2028-11-02' }]);
  });
});
