/** Three people and what each takes from the page to a meeting, on the real api, down to the PDF. */
import { readFile } from 'node:fs/promises';
import { expect, test } from 'vitest';
import { onSmallDesk } from '../../support/page/on-small-desk.js';

const at = onSmallDesk();

/** Clicks a link that downloads, and gives the first bytes of what came. */
async function download(name: string): Promise<string> {
  const waiting = at.page.waitForEvent('download');
  await at.page.getByRole('link', { name }).first().click();
  const path = await (await waiting).path();
  return (await readFile(path)).subarray(0, 5).toString();
}

test('the program manager: what next year, why, the decision on record, the brief', async () => {
  await at.open('/');
  await at.page.getByRole('heading', { level: 1, name: 'Next year: FY28' }).waitFor();
  expect(await at.page.locator('main').innerText()).toContain('S-1 Library Steps');
  await at.page.getByRole('link', { name: 'The reasons, and the decision' }).click();
  await at.page.getByRole('heading', { name: 'Reasons for' }).waitFor();
  await at.page.getByLabel('Decided by').fill('Landscape committee');
  await at.page.getByLabel('Reason').fill('It opens the water line to Mill Bank.');
  await at.page.reload();
  expect(await at.page.getByLabel('Decided by').inputValue()).toBe('Landscape committee');
  await at.page.getByRole('button', { name: 'Record the decision' }).click();
  await at.page.getByText('Recorded.', { exact: true }).waitFor();
  const table = at.page.getByRole('table', { name: 'Decisions on plans of this campus' });
  await expect.poll(() => table.innerText()).toContain('It opens the water line to Mill Bank.');
  expect(await at.desk.store.decisions.listOf(at.desk.campusId)).toMatchObject([
    { site: 'S-1', verdict: 'approved', decidedBy: 'Landscape committee', planId: at.desk.planId },
  ]);
  await at.page.getByRole('link', { name: 'Home' }).click();
  expect(await download('Administration brief (PDF)')).toBe('%PDF-');
});

test('the committee chooses another site than the plan: on record with its dissent, and a step from the plan that follows', async () => {
  const { campusId, planId, store } = at.desk;
  await at.open(`/?view=next&campus=${campusId}&plan=${planId}`);
  const choice = at.page.getByRole('combobox', { name: 'Site', exact: true });
  await choice.selectOption('S-2');
  expect(await choice.locator('option:checked').innerText()).toBe('S-2 Mill Bank (not as planned)');
  await at.page.getByLabel('Decided by').fill('Landscape committee');
  await at.page.getByLabel('Reason').fill('The mill asks for it.');
  await at.page.getByLabel('Who disagreed').fill('The superintendent: the bank is steep.');
  await at.page.getByRole('button', { name: 'Record the decision' }).click();
  await at.page.getByText('The plan does not prepare S-2 in FY28 yet.').waitFor();
  expect(await store.decisions.listOf(campusId)).toContainEqual(
    expect.objectContaining({ site: 'S-2', dissent: 'The superintendent: the bank is steep.' }),
  );
  await at.page.getByRole('link', { name: 'Place it there, and see what gives' }).click();
  const year = at.page.getByRole('combobox', { name: 'Year', exact: true });
  await year.waitFor();
  expect(await year.locator('option:checked').innerText()).toBe('FY28');
  expect(await at.page.getByLabel('Why').inputValue()).toBe('The mill asks for it.');
});

test('the superintendent: moves a site, sees what gives, undoes it, takes the staffing request', async () => {
  await at.open('/?view=plan');
  await at.page.getByRole('button', { name: 'Move or bar S-2' }).click();
  await at.page.getByRole('combobox', { name: 'Year', exact: true }).selectOption('FY32');
  await at.page.getByLabel('Why').fill('The mill road is closed until then.');
  await at.page.getByRole('button', { name: 'See what gives' }).click();
  await at.page.getByText('Solved with the change.').waitFor();
  const gives = at.page.getByRole('table', { name: 'What gives' });
  expect(await gives.innerText()).toContain('S-2 Mill Bank');
  expect(await gives.innerText()).toMatch(/FY30, .*FY32, /s);
  const [newest] = await at.desk.store.requests.listOf(at.desk.campusId);
  expect((await at.desk.store.requests.listOf(at.desk.campusId)).at(-1)).toMatchObject({
    startFromPlan: at.desk.planId,
    campusVersion: 2,
  });
  expect(newest?.startFromPlan).toBeNull();
  await at.page.getByRole('button', { name: 'Keep it: show the new plan' }).click();
  const plan = at.page.getByRole('table', { name: 'All years of the plan' });
  await expect.poll(() => plan.innerText()).toMatch(/FY32\s+S-2/);

  await at.page.getByRole('heading', { name: 'Try a change' }).click();
  await at.page.keyboard.press('Control+z');
  await at.page.getByText('Undone.').waitFor();
  await expect.poll(() => plan.innerText()).toMatch(/FY30\s+S-2/);
  expect((await at.desk.store.campuses.load(at.desk.campusId))?.document['handPlacements']).toEqual(
    (await at.desk.store.campuses.load(at.desk.campusId, 1))?.document['handPlacements'],
  );
  await at.page.getByRole('link', { name: 'For the meeting' }).click();
  expect(await download('Grounds staffing request (PDF)')).toBe('%PDF-');
});

test('the superintendent drags a site to another year: Escape leaves it, letting go asks what gives', async () => {
  const { campusId, planId, store } = at.desk;
  await at.open(`/?view=plan&campus=${campusId}&plan=${planId}`);
  const marks = at.page.locator('#strip rect.site-mark.is-movable');
  await marks.nth(1).scrollIntoViewIfNeeded();
  const [first, second] = [await marks.nth(0).boundingBox(), await marks.nth(1).boundingBox()];
  // S-1 is prepared in FY28 and S-2 in FY30: as far again is FY32.
  const twoYears = second!.x - first!.x;
  const y = second!.y + second!.height / 2;
  const drag = async (): Promise<void> => {
    await at.page.mouse.move(second!.x + second!.width / 2, y);
    await at.page.mouse.down();
    await at.page.mouse.move(second!.x + second!.width / 2 + twoYears, y, { steps: 4 });
    await at.page.getByText('S-2 to FY32').waitFor();
  };
  const asked = (await store.requests.listOf(campusId)).length;
  await drag();
  await at.page.keyboard.press('Escape');
  await at.page.mouse.up();
  expect(await at.page.getByText('S-2 to FY32').count()).toBe(0);
  expect(await store.requests.listOf(campusId)).toHaveLength(asked);

  await drag();
  await at.page.mouse.up();
  await at.page.getByText('Solved with the change.').waitFor();
  const gives = await at.page.getByRole('table', { name: 'What gives' }).innerText();
  expect(gives).toMatch(/S-2 Mill Bank\s+FY30, .*FY32, /s);
  expect(await at.page.getByLabel('Why').inputValue()).toContain('dragged');
  expect(await store.requests.listOf(campusId)).toHaveLength(asked + 1);
  await at.page.keyboard.press('Control+z');
  await at.page.getByText('Undone.').waitFor();
});

test('for administration and donors: the story by keys alone, then the brief', async () => {
  await at.open('/?view=meeting');
  const stage = at.page.getByRole('region', { name: 'The story' });
  await stage.getByRole('heading', { name: 'S-1 Library Steps' }).waitFor();
  await at.page.keyboard.press('ArrowRight');
  await stage.getByText('2 of 7').waitFor();
  await stage.getByRole('img', { name: /^Sites of each year/ }).waitFor();
  await at.page.keyboard.press('End');
  await stage.getByRole('heading', { name: 'How sure this is' }).waitFor();
  await at.page.keyboard.press('Home');
  await stage.getByText('1 of 7').waitFor();
  await at.page.emulateMedia({ media: 'print' });
  expect(await at.page.locator('.all-slides .slide').count()).toBe(7);
  expect(await at.page.locator('.all-slides').isVisible()).toBe(true);
  await at.page.emulateMedia({ media: 'screen' });
  expect(await download('Administration brief (PDF)')).toBe('%PDF-');
});
