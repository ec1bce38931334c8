// The phone in a browser, used through its picture alone: what is done there happens in the app, and is still there after the
// process has been killed.

import assert from 'node:assert/strict';
import { mkdtemp, rm } from 'node:fs/promises';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { Phone, startBrowser, startDesk } from './desk.js';
import { vase } from './picture.js';

let folder;
let desk;
let browser;
let phone;
let atFirst;

before(async () => {
  folder = await mkdtemp(join(tmpdir(), 'laydown-page-'));
  [desk, browser] = await Promise.all([startDesk(folder), startBrowser()]);
  phone = await Phone.open(browser, desk.address);
});

after(async () => {
  await browser?.close();
  await desk?.end();
  await rm(folder, { recursive: true, force: true });
});

/** Types on the phone's own keypad. */
async function keys(digits) {
  for (const key of digits) await phone.tap(key === '.' ? 'Decimal mark' : key);
}

/** How many coats the Weigh screen counts for today, while no verdict stands before it. */
async function coatsToday() {
  return Number((await phone.texts()).map((text) => text.match(/^(\d+) coats? today/)?.[1]).find(Boolean) ?? 0);
}

test('a form is chosen and a reading judged, in words, aloud and felt', async () => {
  await phone.shows('Form: Small mug. Tap to change.');
  // The sample's coats were weighed in the hour before: at midnight some of them are of yesterday.
  atFirst = await coatsToday();
  await phone.tap('Form: Small mug. Tap to change.');
  await phone.tap('Large mug');
  await phone.shows('Form: Large mug. Tap to change.');
  await keys('19.4');
  await phone.shows('Coat, after tare 19.4 g');
  await phone.shows('SHORT');
  await phone.until('the verdict to be spoken', async () => (await phone.page.locator('#said').textContent()).startsWith('Short. Add '));
  assert.equal(await phone.page.locator('#ticks').textContent(), '4');
});

test('dark, turned and with large words, the digits stay', async () => {
  assert.ok((await phone.lightness(0.5, 0.99)) > 128);
  await phone.control('Dark');
  await phone.until('a dark screen', async () => (await phone.lightness(0.5, 0.99)) < 64);
  await phone.control('Turn');
  await phone.until('a turned screen', () => phone.page.locator('#screen').evaluate((canvas) => canvas.width > canvas.height));
  await phone.shows('Coat, after tare 19.4 g');
  await phone.control('Turn');
  await phone.page.getByText('1.5', { exact: true }).click();
  await phone.shows('Coat, after tare 19.4 g');
  await phone.page.getByText('1.0', { exact: true }).click();
  await phone.control('Dark');
  await phone.until('a light screen again', async () => (await phone.lightness(0.5, 0.99)) > 128);
});

test('what was kept outlives a killed process', async () => {
  await phone.tap('Save as it is');
  await phone.until('what was kept', async () => (await phone.texts())
    .some((text) => /^Saved: Large mug, inside, 19\.4 g, short\. Mark \w{5} on the foot/.test(text)));
  await desk.end('SIGKILL');

  desk = await startDesk(folder);
  await phone.page.close();
  phone = await Phone.open(browser, desk.address);
  await phone.shows('Form: Large mug. Tap to change.');
  await phone.until('one coat more', async () => (await coatsToday()) === atFirst + 1);
  await phone.shows('Coat, after tare  g');
  await phone.tap((await phone.texts()).find((text) => /^\d+ coats? today/.test(text)));
  await phone.shows('19.4 g');
  await phone.press('Escape');
  await phone.until('the keys again', async () => !(await phone.texts()).includes('19.4 g'));
});

test('a bucket is checked by typing, and the check is kept', async () => {
  await phone.tap('Buckets');
  await phone.tap('Iron red');
  await phone.tap('Check');
  await phone.tap('SG or hydrometer');
  await phone.tap('1.45');
  await phone.type('1,5');
  await phone.shows('SG 1.50, 54% powder by weight.');
  await phone.tap('Save this check');
  await phone.shows('SG 1.50');
  await phone.press('Escape');
  await phone.shows('Add a glaze');
  await phone.tap('Weigh');
});

test('a photograph given to the page reaches the form', async () => {
  await phone.tap('Studio');
  await phone.reachAndTap('Add a form');
  await phone.tap('Straight mug');
  await phone.reachAndTap('Side photo');
  await phone.reachAndTap('Take a photo');
  await phone.page.getByText('The app opens the camera.').waitFor();
  await phone.page.getByRole('button', { name: 'Turn back' }).click();
  await phone.shows('No picture was taken. Nothing was changed.');
  await phone.reachAndTap('Take a photo');
  await phone.give('vase.png', 'image/png', vase());
  await phone.shows('Your photo with the outline that was found in it.');
  await phone.reachAndTap('Choose a picture');
  await phone.page.getByText('The app asks for a picture.').waitFor();
  await phone.give('letter.png', 'image/png', Buffer.from('This is a letter and no picture.'));
  await phone.until('the sentence', async () => (await phone.texts()).some((text) => text.startsWith('This file is not a JPEG or PNG picture.')));
  await phone.press('Escape');
  await phone.tap('Discard');
  await phone.tap('Weigh');
});

test('a load is fired, and each piece photographed beside its record', async (t) => {
  await phone.tap('Kiln');
  await phone.tap('Firing 3: cone 6, Garden kiln');
  await phone.shows('Being loaded');
  await phone.reachAndTap('Mark as fired');
  await phone.tap('Yes');
  await phone.tap('Look at the pieces');
  const times = [];
  for (let piece = 1; piece <= 3; piece++) {
    await phone.until(`piece ${piece}`, async () => (await phone.texts()).some((text) => text.startsWith(`${piece} of 5, shelf 1`)));
    const began = Date.now();
    await phone.tap('Take a photo');
    await phone.give('vase.png', 'image/png', vase());
    await phone.shows('Photo 1 of 1. Tap to look closer.');
    await phone.tap('Inside: Right');
    await phone.tap('Your rating: 4');
    await phone.shows('Your rating: 4, chosen');
    await phone.tap('Next piece');
    times.push((Date.now() - began) / 1000);
  }
  t.diagnostic(`a piece took ${times.join(', ')} s, handing over the picture included`);
  await phone.control('Back');
  await phone.shows('Look at the pieces: 2 left');
  await phone.reachAndTap('Contact sheet');
  await phone.reachAndTap('Share as a picture');
  await phone.useCard('Take it onto the card');
  await phone.until('the sheet on the card', async () => (await phone.page.locator('#card-files a').count()) === 1);
  const sheet = await phone.fromCard('jpg');
  assert.match(sheet.name, /\.jpg$/);
  assert.deepEqual([...sheet.bytes.subarray(0, 2)], [0xff, 0xd8], 'a JPEG picture');
  await phone.control('Back');
  await phone.control('Back');
  await phone.tap('Weigh');
});

test('a backup on the memory card makes the same studio on a new phone', async (t) => {
  await phone.tap('Studio');
  await phone.reachAndTap('Backup');
  await phone.tap('Make a backup');
  await phone.useCard('Write it on the card');
  await phone.until('the sentence', async () => (await phone.texts()).some((text) => text.startsWith('Backup saved and verified: ')));
  const backup = await phone.fromCard('zip');
  assert.match(backup.name, /^laydown-[0-9-]+\.zip$/);
  await phone.control('Back');
  await phone.tap('Weigh');

  const other = await mkdtemp(join(tmpdir(), 'laydown-page-'));
  const second = await startDesk(other, '--empty');
  t.after(async () => {
    await second.end();
    await rm(other, { recursive: true, force: true });
  });
  const began = Date.now();
  const fresh = await Phone.open(browser, second.address);
  await fresh.tap('Restore a backup');
  await fresh.tap('Restore a backup, or what another phone sent');
  await fresh.give(backup.name, 'application/zip', backup.bytes);
  await fresh.until('the sentence', async () => (await fresh.texts()).some((text) => text.startsWith('Restored: ')));
  t.diagnostic(`from an empty phone to the whole studio in ${(Date.now() - began) / 1000} s`);
  await fresh.control('Back');
  await fresh.tap('Weigh');
  await fresh.until('the forms of the studio', async () => (await fresh.texts()).some((text) => /^Form: .* Tap to change\.$/.test(text)));
  assert.deepEqual(fresh.errors, []);
});

test('the back key leaves the app, and it opens again', async () => {
  // From Weigh alone: a key that came before the tap on its tab was heard would only lead there.
  await phone.shows('Form: Large mug. Tap to change.');
  await phone.control('Back');
  await phone.page.getByText('You have left the app.').waitFor();
  await phone.page.getByRole('button', { name: 'Open laydown' }).click();
  await phone.shows('Form: Large mug. Tap to change.');
});

test('nobody but this page on this machine is answered', async () => {
  const { port } = new URL(desk.address);
  const ask = (method, headers) => new Promise((answered, failed) => {
    request({ host: '127.0.0.1', port, path: method === 'GET' ? '/state' : '/do', method, headers }, (answer) => {
      answer.resume();
      answered(answer.statusCode);
    }).on('error', failed).end(method === 'POST' ? 'key back' : undefined);
  });
  assert.equal(await ask('GET', { Host: `elsewhere.example:${port}` }), 403);
  assert.equal(await ask('GET', { Origin: 'http://elsewhere.example' }), 403);
  assert.equal(await ask('POST', {}), 403);
  assert.equal(await ask('POST', { Origin: 'http://elsewhere.example' }), 403);
  assert.equal(await ask('GET', {}), 200);
  await phone.shows('Form: Large mug. Tap to change.');
});

test('the page had no errors', () => {
  assert.deepEqual(phone.errors, []);
});
