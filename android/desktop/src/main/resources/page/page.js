// The page side of the desk: shows the phone's pictures and state, and sends on what is done to it, in order.

const $ = (id) => document.getElementById(id);
const canvas = $('screen');
const paper = canvas.getContext('2d', { alpha: false });
const keys = $('keys');

// ---- to the phone ----

const waiting = [];
let sending = false;

/** Sends lines in order, one request at a time; a move that has not left yet gives way to the next one. */
function send(line) {
  const last = waiting.at(-1);
  if (last?.startsWith('move ') && line.startsWith('move ')) waiting.pop();
  waiting.push(line);
  if (!sending) drain();
}

async function drain() {
  sending = true;
  while (waiting.length > 0) {
    const lines = waiting.splice(0, waiting.length);
    await post('/do', lines.join('\n'));
  }
  sending = false;
}

async function post(path, body) {
  try {
    const answer = await fetch(path, { method: 'POST', body });
    trouble(answer.ok ? '' : await answer.text());
  } catch {
    trouble('The desk does not answer. Start it again, and this page carries on.');
  }
}

function trouble(words) {
  $('trouble').textContent = words;
}

// ---- from the phone ----

/** Asks for whatever is newer than what we have, again and again; waits a little while the desk is away. */
async function follow(path, take) {
  let number = 0;
  for (;;) {
    try {
      const answer = await fetch(`${path}?${number}`);
      if (answer.status === 200) {
        number = Number(answer.headers.get('X-Number'));
        await take(answer);
        trouble('');
      } else if (answer.status !== 204) {
        throw new Error(answer.statusText);
      }
    } catch {
      trouble('The desk does not answer. Start it again, and this page carries on.');
      number = 0;
      await new Promise((wake) => setTimeout(wake, 500));
    }
  }
}

follow('/frame', async (answer) => {
  const picture = await createImageBitmap(await answer.blob());
  if (canvas.width !== picture.width || canvas.height !== picture.height) {
    canvas.width = picture.width;
    canvas.height = picture.height;
  }
  paper.drawImage(picture, 0, 0);
  picture.close();
});

let ticks = 0;

follow('/state', async (answer) => {
  const state = await answer.json();
  $('night').setAttribute('aria-pressed', state.night);
  for (const choice of document.querySelectorAll('[name=font]')) choice.checked = Number(choice.value) === state.font;
  $('said').textContent = state.said ?? 'nothing yet';
  $('ticks').textContent = state.ticks;
  if (state.ticks > ticks) flash();
  ticks = state.ticks;
  ask(state.request);
  show(state.card);
  cover(state);
  list(state.labels);
});

function flash() {
  const dot = $('tick');
  dot.classList.remove('now');
  void dot.offsetWidth; // starts the animation anew
  dot.classList.add('now');
}

/** What the app asks for: in words, whether a file of this machine answers it, and what the memory card does about it. */
const REQUESTS = {
  photo: { words: 'The app opens the camera.', file: true },
  picture: { words: 'The app asks for a picture.', file: true },
  file: { words: 'The app asks for a file.', file: true },
  place: { words: 'The app asks where to write a file.', card: 'Write it on the card', line: 'place' },
  folder: { words: 'The app asks for a folder.', card: 'Use the card', line: 'folder' },
  share: { words: 'The app hands something on to another app.', card: 'Take it onto the card', line: 'take' },
};
let asked = {};

function ask(request) {
  asked = REQUESTS[request] ?? { words: `The app asks another app: ${request}` };
  $('request').hidden = request === null;
  $('request-words').textContent = asked.words;
  $('file-label').hidden = !asked.file;
  $('use-card').hidden = !asked.card;
  $('use-card').textContent = asked.card ?? '';
}

function show(card) {
  $('card-in').checked = card.in;
  $('card-full').checked = card.full;
  $('card-files').replaceChildren(...card.files.map((name) => {
    const link = document.createElement('a');
    link.href = `/card?${encodeURIComponent(name)}`;
    link.download = name;
    link.textContent = name;
    const row = document.createElement('li');
    row.append(link);
    return row;
  }));
}

function cover(state) {
  $('cover').hidden = !state.left && state.stopped === null;
  $('cover-words').textContent = state.stopped === null ? 'You have left the app.' : `The app has stopped. ${state.stopped}`;
}

function list(labels) {
  $('labels').replaceChildren(...labels.map((label) => {
    const row = document.createElement('li');
    row.dataset.x = label.x;
    row.dataset.y = label.y;
    if (label.tap) {
      const button = document.createElement('button');
      button.type = 'button';
      button.textContent = label.text;
      button.addEventListener('click', () => {
        send(`down ${label.x} ${label.y}`);
        setTimeout(() => send(`up ${label.x} ${label.y}`), 60);
      });
      row.append(button);
    } else {
      row.textContent = label.text;
    }
    return row;
  }));
}

// ---- fingers ----

function at(event) {
  const box = canvas.getBoundingClientRect();
  const x = ((event.clientX - box.left) * canvas.width) / box.width;
  const y = ((event.clientY - box.top) * canvas.height) / box.height;
  return `${x.toFixed(1)} ${y.toFixed(1)}`;
}

let finger = null;

canvas.addEventListener('pointerdown', (event) => {
  if (finger !== null || event.button !== 0) return;
  finger = event.pointerId;
  canvas.setPointerCapture(finger);
  send(`down ${at(event)}`);
  event.preventDefault();
  keys.focus({ preventScroll: true });
});
canvas.addEventListener('pointermove', (event) => {
  if (event.pointerId === finger) send(`move ${at(event)}`);
});
for (const end of ['pointerup', 'pointercancel']) {
  canvas.addEventListener(end, (event) => {
    if (event.pointerId !== finger) return;
    finger = null;
    send(`up ${at(event)}`);
  });
}

const PIXELS_PER_LINE = 60;
canvas.addEventListener('wheel', (event) => {
  event.preventDefault();
  send(`wheel ${at(event)} ${(-event.deltaY / PIXELS_PER_LINE).toFixed(2)}`);
}, { passive: false });

// ---- keys ----

const NAMED = {
  Enter: 'enter', Backspace: 'delete', Tab: 'tab', Escape: 'back',
  ArrowLeft: 'left', ArrowRight: 'right', ArrowUp: 'up', ArrowDown: 'down',
};

function typed() {
  if (keys.value !== '') send(`type ${encodeURIComponent(keys.value)}`);
  keys.value = '';
}

keys.addEventListener('keydown', (event) => {
  const name = NAMED[event.key];
  if (event.isComposing || name === undefined || (name === 'tab' && event.shiftKey)) return;
  event.preventDefault();
  send(`key ${name}`);
});
keys.addEventListener('input', (event) => {
  if (!event.isComposing) typed();
});
keys.addEventListener('compositionend', typed);

// ---- controls ----

$('back').addEventListener('click', () => send('key back'));
$('turn').addEventListener('click', () => send('turn'));
$('night').addEventListener('click', () => send(`night ${$('night').getAttribute('aria-pressed') === 'true' ? 'off' : 'on'}`));
$('restart').addEventListener('click', () => send('restart'));
$('open').addEventListener('click', () => send('restart'));
$('cancel').addEventListener('click', () => send('cancel'));
$('fonts').addEventListener('change', (event) => send(`font ${event.target.value}`));
$('use-card').addEventListener('click', () => send(asked.line));
$('card-in').addEventListener('change', (event) => send(`card ${event.target.checked ? 'in' : 'out'}`));
$('card-full').addEventListener('change', (event) => send(`full ${event.target.checked ? 'on' : 'off'}`));
$('file').addEventListener('change', async (event) => {
  const [file] = event.target.files;
  if (file) await post(`/file?${encodeURIComponent(file.name)}`, file);
  event.target.value = '';
});
