// The phone in a browser, used through its picture alone: what is done there happens in the app, and is still there after the
// process has been killed.

import assert from 'node:assert/strict';
import { mkdtemp, rm } from 'node:fs/promises';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { Phone, startBrowser, startDesk } from './desk.js';

let folder;
let desk;
let browser;
let phone;

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

test('taps, speech and ticks', async () => {
  await phone.tap('Tap');
  await phone.shows('1 tap');
  assert.equal(await phone.page.locator('#said').textContent(), '1 tap');
  assert.equal(await phone.page.locator('#ticks').textContent(), '1');
});

test('a dialog takes the touches and goes with the back key', async () => {
  await phone.tap('Ask');
  await phone.shows('Start again at nought?');
  await phone.press('Escape');
  await phone.until('the dialog to go', async () => !(await phone.texts()).includes('Start again at nought?'));
});

test('a drag and a wheel scroll the list', async () => {
  await phone.drag(0.8, 0.4);
  await phone.until('the first row to go', async () => !(await phone.texts()).includes('Row 1'));
  await phone.wheel(-3000);
  await phone.shows('Row 1');
});

test('dark, turned and with large words, the app keeps its state', async () => {
  assert.ok((await phone.lightness(0.5, 0.95)) > 128);
  await phone.control('Dark');
  await phone.until('a dark screen', async () => (await phone.lightness(0.5, 0.95)) < 64);
  await phone.control('Turn');
  await phone.until('a turned screen', () => phone.page.locator('#screen').evaluate((canvas) => canvas.width > canvas.height));
  await phone.shows('1 tap');
  await phone.control('Turn');
  await phone.page.getByText('1.5', { exact: true }).click();
  await phone.shows('1 tap');
  await phone.page.getByText('1.0', { exact: true }).click();
  await phone.control('Dark');
});

test('the back key leaves the app, and it opens again', async () => {
  await phone.control('Back');
  await phone.page.getByText('You have left the app.').waitFor();
  await phone.page.getByRole('button', { name: 'Open laydown' }).click();
  await phone.shows('1 tap');
});

test('what was entered outlives a killed process', async () => {
  await phone.tap('Note');
  await phone.type('31,5 g – grün');
  await phone.shows('31,5 g – grün');
  await desk.end('SIGKILL');

  desk = await startDesk(folder);
  await phone.page.close();
  phone = await Phone.open(browser, desk.address);
  await phone.shows('31,5 g – grün');
  await phone.shows('1 tap');
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
  await phone.shows('1 tap');
});

test('the page had no errors', () => {
  assert.deepEqual(phone.errors, []);
});
