// Starts the desk as a person does, and holds its page in a real browser.

import assert from 'node:assert/strict';
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFile } from 'node:fs/promises';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';

const PHONE = fileURLToPath(new URL('../../tools/phone', import.meta.url));
const UP_MS = 60_000;

/** Starts the desk with its data in `folder`, with the sample studio unless told `--empty`; resolves once it has printed its address. */
export async function startDesk(folder, ...more) {
  const desk = spawn(PHONE, ['--port', '0', '--data', folder, ...more], { stdio: ['ignore', 'pipe', 'pipe'] });
  const heard = [];
  desk.stderr.on('data', (bytes) => heard.push(bytes.toString()));
  const address = await new Promise((found, failed) => {
    const patience = setTimeout(() => failed(new Error(`no address after ${UP_MS} ms\n${heard.join('')}`)), UP_MS);
    createInterface({ input: desk.stdout }).on('line', (line) => {
      heard.push(`${line}\n`);
      const said = line.match(/^laydown phone: (http:\S+)$/);
      if (said) {
        clearTimeout(patience);
        found(said[1]);
      }
    });
    desk.once('exit', (code) => failed(new Error(`the desk ended with ${code}\n${heard.join('')}`)));
  });
  return {
    address,
    /** Ends it: `SIGTERM` as one closes an app, `SIGKILL` as a battery is pulled. */
    async end(signal = 'SIGTERM') {
      if (desk.exitCode !== null || desk.signalCode !== null) return;
      desk.kill(signal);
      await once(desk, 'exit');
    },
  };
}

/** Debian's Chromium, kept from calling home. */
export function startBrowser() {
  return chromium.launch({
    executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
    args: [
      '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run',
      '--disable-background-networking', '--disable-component-update', '--disable-sync',
    ],
  });
}

/** The page, used by what is seen on it. */
export class Phone {
  static async open(browser, address) {
    const page = await browser.newPage({ viewport: { width: 1000, height: 1000 } });
    const phone = new Phone(page);
    page.on('pageerror', (error) => phone.errors.push(error.message));
    await page.goto(address);
    await page.locator('#labels li').first().waitFor({ state: 'attached' });
    return phone;
  }

  constructor(page) {
    this.page = page;
    this.errors = [];
  }

  /** Waits until the phone's screen shows this text, word for word. */
  async shows(text) {
    await this.page.waitForFunction(
      (wanted) => [...document.querySelectorAll('#labels li')].some((row) => row.textContent === wanted), text, { timeout: 10_000 },
    ).catch(async () => assert.fail(`"${text}" is not on the screen: ${JSON.stringify(await this.texts())}`));
  }

  /** Every text on the phone's screen. */
  texts() {
    return this.page.locator('#labels li').allTextContents();
  }

  /** Where on the page the middle of this text is, once it has come to rest: a list may still be scrolling. */
  async #spot(text) {
    await this.shows(text);
    const place = () => this.page.evaluate((wanted) => {
      const rows = [...document.querySelectorAll('#labels li')].filter((row) => row.textContent === wanted);
      const row = rows.find((one) => one.querySelector('button')) ?? rows[0];
      return row && [Number(row.dataset.x), Number(row.dataset.y)];
    }, text);
    for (let before = await place(), tries = 0; tries < 40; tries++) {
      await this.page.waitForTimeout(150);
      const now = await place();
      if (before && now && now[0] === before[0] && now[1] === before[1]) return this.#onPage(...now);
      before = now;
    }
    return assert.fail(`"${text}" does not come to rest`);
  }

  async #onPage(x, y) {
    const box = await this.page.locator('#screen').boundingBox();
    const width = await this.page.locator('#screen').evaluate((canvas) => canvas.width);
    const scale = box.width / width;
    return [box.x + x * scale, box.y + y * scale];
  }

  /** Clicks the picture where this text is, as a finger would. */
  async tap(text) {
    const [x, y] = await this.#spot(text);
    await this.page.mouse.click(x, y, { delay: 40 });
  }

  /** Turns the wheel over the picture. */
  async wheel(pixels) {
    const box = await this.page.locator('#screen').boundingBox();
    await this.page.mouse.move(box.x + box.width / 2, box.y + box.height * 0.7);
    await this.page.mouse.wheel(0, pixels);
  }

  /** Scrolls until this text stands well within the picture, and taps it. */
  async reachAndTap(text) {
    await this.until(`"${text}" to come into reach`, async () => {
      const part = await this.page.evaluate((wanted) => {
        const row = [...document.querySelectorAll('#labels li')].find((one) => one.textContent === wanted);
        return row ? Number(row.dataset.y) / document.getElementById('screen').height : 1;
      }, text);
      if (part > 0.15 && part < 0.8) return true;
      await this.wheel(part > 0.5 ? 60 : -60);
      await this.page.waitForTimeout(100);
      return false;
    });
    await this.tap(text);
  }

  /** Gives a file to the app once it waits for a picture or another file. */
  async give(name, mimeType, buffer) {
    await this.page.getByText(/^The app (opens the camera|asks for a (picture|file))\.$/).waitFor();
    await this.page.getByLabel('File', { exact: true }).setInputFiles({ name, mimeType, buffer });
  }

  /** Answers what the app asks for with the phone's memory card. */
  useCard(button) {
    return this.page.getByRole('button', { name: button, exact: true }).click();
  }

  /** The name and bytes of the first file on the card whose name ends so. */
  async fromCard(ending) {
    const link = this.page.locator('#card-files a').filter({ hasText: new RegExp(`\\.${ending}$`) }).first();
    const [download] = await Promise.all([
      this.page.waitForEvent('download'),
      link.evaluate((one) => one.click()),
    ]);
    return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
  }

  type(text) {
    return this.page.keyboard.type(text);
  }

  press(key) {
    return this.page.keyboard.press(key);
  }

  /** Presses one of the page's own buttons. */
  control(name) {
    return this.page.getByRole('toolbar').getByRole('button', { name }).click();
  }

  /** How light the picture is at a point, in parts of it: 0 to 255. */
  lightness(x, y) {
    return this.page.locator('#screen').evaluate((canvas, [px, py]) => {
      const [r, g, b] = canvas.getContext('2d').getImageData(px * canvas.width, py * canvas.height, 1, 1).data;
      return (r + g + b) / 3;
    }, [x, y]);
  }

  /** Waits for something about the page to become true. */
  async until(what, test) {
    const end = Date.now() + 10_000;
    while (!(await test())) {
      assert.ok(Date.now() < end, `waited in vain for ${what}`);
      await this.page.waitForTimeout(30);
    }
  }
}
