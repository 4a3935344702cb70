'use strict';
const $ = id => document.getElementById(id);
const make = (name, text, cls) => {
  const node = document.createElement(name);
  if (text) node.textContent = text;
  if (cls) node.className = cls;
  return node;
};
let version = -1;
let picture = null;
let drawings = new Map();    // sheet → its drawing
let settings = {};
let sheet = '';
let before = new Map();      // drawn text of each element of the sheet in view
let first = null;            // parameters as the plan has them
let picked = '';
let points = [];
const views = new Map();     // sheet → part of it in view
const off = new Set();       // titles of layers that are switched off
const svg = () => $('view').querySelector('svg');

async function follow() {
  for (;;) {
    try {
      const answer = await fetch('state?' + version);
      const state = await answer.json();
      problems(state.problems);
      if (state.picture && state.picture.sheets) {
        settings = state.settings;
        // What is not told is as it was: the sheet in view comes before the rest.
        show({ ...picture, ...state.picture }, state.version > 1 && picture !== null);
      }
      version = state.version;
      $('status').textContent = state.problems.length ? 'The plan has problems; this is the last good picture.' : 'Drawn as saved.';
    } catch (e) {
      $('status').textContent = 'yardloom watch has ended; this is its last picture.';
      await new Promise(r => setTimeout(r, 3000));
    }
  }
}

function problems(list) {
  const box = $('problems');
  const text = JSON.stringify(list);
  if (box.dataset.text === text) return;
  box.dataset.text = text;
  box.hidden = !list.length;
  box.replaceChildren(...list.map(p => {
    const one = make('p', p.place + ': ' + p.text);
    if (p.line) one.append(make('code', p.line));
    return one;
  }));
}

function options(select, list, chosen) {
  select.replaceChildren(...list.map(([value, text]) => {
    const option = make('option', text);
    option.value = value;
    option.selected = value === chosen;
    return option;
  }));
}

// The sheet in view is drawn first when the plan is saved.
const inView = () => fetch('view', { method: 'POST', body: sheet });

function show(next, again) {
  // Sheets that are as they were come without their drawing.
  for (const s of next.sheets) {
    if (s.svg === undefined) s.svg = drawings.get(s.id);
  }
  drawings = new Map(next.sheets.map(s => [s.id, s.svg]));
  picture = next;
  document.title = next.title;
  $('title').textContent = next.title;
  if (!next.sheets.some(s => s.id === sheet)) {
    sheet = (next.sheets.find(s => s.id === 'site-plan') || next.sheets[0]).id;
    inView();
  }
  options($('sheet'), next.sheets.map(s => [s.id, s.title]), sheet);
  options($('table'), next.tables.map(t => [t.id, t.title]), $('table').value);
  options($('element'), [['', 'choose an element']].concat(next.elements.map(e => [e.id, e.id])), picked);
  draw(again);
  table();
  parameters();
  $('findings').replaceChildren(...next.findings.map(finding));
}

function finding(f) {
  const item = make('li');
  item.append(make('span', f.severity, 'severity ' + f.severity));
  item.append(' ' + (f.element ? f.element + ': ' : '') + f.text + ' ');
  item.append(make('span', f.advice + (f.place ? ' (' + f.place + ')' : ''), 'muted'));
  return item;
}

function draw(again) {
  const data = picture.sheets.find(s => s.id === sheet);
  const parsed = new DOMParser().parseFromString(data.svg, 'image/svg+xml').documentElement;
  const node = document.importNode(parsed, true);
  const paper = node.getAttribute('viewBox');
  node.dataset.paper = paper;
  node.setAttribute('viewBox', views.get(sheet) || paper);
  node.removeAttribute('width');
  node.removeAttribute('height');
  node.setAttribute('role', 'img');
  const now = new Map();
  const layers = [];
  for (const group of node.querySelectorAll('g[id]')) {
    const title = titleOf(group);
    if (group.id.includes('-layer-')) {
      layers.push(title);
      group.classList.toggle('off', off.has(title));
    } else if (title) {
      now.set(group.id, group.outerHTML);
      if (again && before.size && before.get(group.id) !== group.outerHTML && !group.querySelector('g[id]')) group.classList.add('changed');
    }
  }
  before = now;
  $('view').replaceChildren(node);
  switches([...new Set(layers)]);
  if (picked) mark();
  ruler();
}

const titleOf = group => {
  const title = [...group.children].find(c => c.tagName === 'title');
  return title ? title.textContent : '';
};

function switches(layers) {
  const focus = document.activeElement && document.activeElement.dataset.layer;
  $('layers').replaceChildren(...layers.map(title => {
    const label = make('label');
    const box = make('input');
    box.type = 'checkbox';
    box.checked = !off.has(title);
    box.dataset.layer = title;
    box.addEventListener('change', () => {
      if (box.checked) off.delete(title); else off.add(title);
      for (const g of svg().querySelectorAll('g[id*="-layer-"]')) g.classList.toggle('off', off.has(titleOf(g)));
    });
    label.append(box, title);
    return label;
  }));
  if (!layers.length) $('layers').textContent = 'This sheet has no layers.';
  if (focus) [...$('layers').querySelectorAll('input')].filter(b => b.dataset.layer === focus).forEach(b => b.focus());
}

function table() {
  const t = picture.tables.find(x => x.id === $('table').value) || picture.tables[0];
  if (!t) return;
  const node = make('table');
  node.append(make('caption', t.title));
  const head = make('tr');
  t.head.forEach((h, i) => { const c = make('th', h, t.numbers[i] ? 'number' : ''); c.scope = 'col'; head.append(c); });
  const top = make('thead');
  top.append(head);
  const body = make('tbody');
  for (const row of t.rows) {
    const line = make('tr');
    row.forEach((text, i) => {
      const c = make(i ? 'td' : 'th', text, t.numbers[i] ? 'number' : '');
      if (!i) c.scope = 'row';
      line.append(c);
    });
    body.append(line);
  }
  node.append(top, body);
  $('table-here').replaceChildren(node, ...t.notes.map(n => make('p', n, 'muted')));
}

function parameters() {
  if (!first) first = Object.fromEntries(picture.parameters.map(p => [p.name, p.value]));
  $('parameters-part').hidden = !picture.parameters.length;
  const focus = document.activeElement && document.activeElement.id;
  $('parameters').replaceChildren(...picture.parameters.map(p => {
    const label = make('label', p.name);
    const field = make('input');
    field.type = 'text';
    field.id = 'p-' + p.name;
    field.value = p.value;
    field.addEventListener('change', () => set(p.name, field.value));
    const number = /^(-?[0-9.]+)(\s*\S.*)?$/.exec(p.value);
    if (number && Number(number[1]) > 0) {
      const slider = make('input');
      const base = Number(((/^[0-9.]+/.exec(first[p.name]) || [])[0]) || number[1]);
      const digits = Math.max(0, 2 - Math.floor(Math.log10(base)));
      slider.type = 'range';
      slider.id = 's-' + p.name;
      slider.setAttribute('aria-label', p.name + ' slider');
      slider.min = (base / 4).toFixed(digits);
      slider.max = (Math.max(base, Number(number[1])) * 3).toFixed(digits);
      slider.step = Number.isInteger(base) && !/[a-z]/.test(p.value) ? 1 : Math.pow(10, -digits);
      slider.value = number[1];
      slider.addEventListener('input', () => { field.value = slider.value + (number[2] || ''); });
      slider.addEventListener('change', () => set(p.name, field.value));
      label.append(slider);
    }
    label.append(field);
    return label;
  }));
  if (focus && $(focus)) $(focus).focus();
  const text = Object.entries(settings).map(([n, v]) => '--set ' + n + '=' + (/[\s'"$]/.test(v) ? "'" + v.replace(/\s/g, '') + "'" : v)).join(' ');
  $('set-text').textContent = text || 'as the script says';
}

const set = (name, value) => fetch('set', { method: 'POST', body: name + '=' + value.replace(/\s/g, '') });

async function pick(id) {
  picked = id;
  $('element').value = id;
  mark();
  const box = $('picked');
  const e = picture.elements.find(x => x.id === id);
  if (!e) { box.replaceChildren(); return; }
  const list = make('dl');
  const add = (to, name, text, question) => {
    const said = make('dd', text);
    if (question) said.append(why(name, question));
    to.append(make('dt', name), said);
  };
  add(list, 'script line', e.place + (e.line ? ': ' + e.line : ''));
  const more = make('details');
  const rest = make('dl');
  for (const t of picture.tables) {
    t.rows.forEach((row, r) => {
      if (![e.name, e.id, e.id.replaceAll('"', '')].includes(row[0])) return;
      add(list.childElementCount < 8 ? list : rest, t.title, row.slice(1).map((v, i) => v ? t.head[i + 1] + ' ' + v : '').filter(v => v).join('; '), t.id + ' / ' + t.names[r]);
    });
  }
  more.append(make('summary', 'More figures'), rest);
  box.replaceChildren(make('strong', e.id), list, ...(rest.childElementCount ? [more] : []));
}

// Formula, inputs and sources of what a row of a table says, asked for when it is opened.
function why(name, question) {
  const part = make('details');
  const head = make('summary', 'Why');
  head.setAttribute('aria-label', 'Why: ' + name);
  const text = make('pre', '…');
  text.tabIndex = 0;
  part.append(head, text);
  part.addEventListener('toggle', async () => {
    if (part.open) text.textContent = await (await fetch('why?' + encodeURIComponent(question))).text();
  });
  return part;
}

function mark() {
  if (!svg()) return;
  for (const g of svg().querySelectorAll('g[id]')) g.classList.toggle('picked', picked !== '' && titleOf(g) === picked);
}

// The part of the sheet in view.
const box = () => svg().getAttribute('viewBox').split(' ').map(Number);
function look(b) {
  const text = b.map(v => Math.round(v * 100) / 100).join(' ');
  svg().setAttribute('viewBox', text);
  views.set(sheet, text);
  ruler();
}
function zoom(factor, at) {
  const [x, y, w, h] = box();
  const p = at || [x + w / 2, y + h / 2];
  if (w * factor > 20000 || w * factor < 2) return;
  look([p[0] - (p[0] - x) * factor, p[1] - (p[1] - y) * factor, w * factor, h * factor]);
}
function shift(dx, dy) { const [x, y, w, h] = box(); look([x + dx * w, y + dy * h, w, h]); }
function paper(event) {
  const p = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg().getScreenCTM().inverse());
  return [p.x, p.y];
}
function whole() { views.delete(sheet); svg().setAttribute('viewBox', svg().dataset.paper); ruler(); }

// Measuring: a line from point to point, an area once there are three.
function ruler() {
  const node = svg();
  if (!node) return;
  node.querySelectorAll('.ruler').forEach(r => r.remove());
  const scale = picture.sheets.find(s => s.id === sheet).mmPerM;
  if (!points.length) { $('measured').textContent = $('measure').getAttribute('aria-pressed') === 'true' ? (scale ? 'Click points on the sheet; Escape ends.' : 'This sheet has no scale.') : ''; return; }
  const line = document.createElementNS('http://www.w3.org/2000/svg', 'polyline');
  line.setAttribute('points', points.map(p => p.join(',')).join(' '));
  line.setAttribute('class', 'ruler');
  line.setAttribute('stroke-width', box()[2] / 400);
  node.append(line);
  if (!scale) return;
  let length = 0;
  let twice = 0;
  points.forEach((p, i) => {
    const q = points[(i + 1) % points.length];
    if (i + 1 < points.length) length += Math.hypot(q[0] - p[0], q[1] - p[1]);
    twice += p[0] * q[1] - q[0] * p[1];
  });
  const us = picture.units === 'US';
  const m = length / scale;
  const m2 = Math.abs(twice) / 2 / scale / scale;
  $('measured').textContent = (us ? (m / 0.3048).toFixed(1) + ' ft' : m.toFixed(2) + ' m')
    + (points.length > 2 ? ', area ' + (us ? (m2 / 0.09290304).toFixed(0) + ' sq ft' : m2.toFixed(1) + ' m²') : '');
}

const pointers = new Map();
let moved = false;
$('view').addEventListener('pointerdown', e => { pointers.set(e.pointerId, e); moved = false; });
$('view').addEventListener('pointermove', e => {
  const last = pointers.get(e.pointerId);
  if (!last) return;
  if (Math.hypot(e.clientX - last.clientX, e.clientY - last.clientY) < (moved ? 0 : 4)) return;
  moved = true;
  if (pointers.size === 2) {
    const other = [...pointers.values()].find(p => p.pointerId !== e.pointerId);
    const was = Math.hypot(last.clientX - other.clientX, last.clientY - other.clientY);
    const now = Math.hypot(e.clientX - other.clientX, e.clientY - other.clientY);
    if (was > 0 && now > 0) zoom(was / now, paper(other));
  } else {
    const a = paper(last);
    const b = paper(e);
    const [x, y, w, h] = box();
    look([x + a[0] - b[0], y + a[1] - b[1], w, h]);
  }
  pointers.set(e.pointerId, e);
});
for (const name of ['pointerup', 'pointercancel', 'pointerleave']) $('view').addEventListener(name, e => pointers.delete(e.pointerId));
$('view').addEventListener('click', e => {
  if (moved || !svg()) return;
  if ($('measure').getAttribute('aria-pressed') === 'true') { points.push(paper(e)); ruler(); return; }
  const ids = new Set(picture.elements.map(x => x.id));
  for (const node of document.elementsFromPoint(e.clientX, e.clientY)) {
    let g = node.closest('g[id]');
    while (g && !ids.has(titleOf(g))) g = g.parentElement.closest('g[id]');
    if (g) { pick(titleOf(g)); return; }
  }
  pick('');
});
$('view').addEventListener('wheel', e => { e.preventDefault(); zoom(e.deltaY > 0 ? 1.2 : 1 / 1.2, paper(e)); }, { passive: false });
$('view').addEventListener('keydown', e => {
  const act = { '+': () => zoom(1 / 1.3), '=': () => zoom(1 / 1.3), '-': () => zoom(1.3), '0': whole,
    ArrowLeft: () => shift(-.1, 0), ArrowRight: () => shift(.1, 0), ArrowUp: () => shift(0, -.1), ArrowDown: () => shift(0, .1),
    Escape: () => measuring(false) }[e.key];
  if (act && svg() && !e.ctrlKey && !e.metaKey) { e.preventDefault(); act(); }
});
function measuring(on) {
  points = [];
  $('measure').setAttribute('aria-pressed', String(on));
  $('view').classList.toggle('measuring', on);
  if (svg()) ruler();
}
$('measure').addEventListener('click', () => measuring($('measure').getAttribute('aria-pressed') !== 'true'));
$('closer').addEventListener('click', () => zoom(1 / 1.3));
$('farther').addEventListener('click', () => zoom(1.3));
$('whole').addEventListener('click', whole);
$('sheet').addEventListener('change', () => { sheet = $('sheet').value; inView(); before = new Map(); points = []; draw(false); });
$('table').addEventListener('change', table);
$('element').addEventListener('change', () => pick($('element').value));
$('copy').addEventListener('click', async () => {
  try { await navigator.clipboard.writeText($('set-text').textContent); $('status').textContent = 'Copied.'; }
  catch (e) { getSelection().selectAllChildren($('set-text')); $('status').textContent = 'Selected; copy it with the keyboard.'; }
});
follow();
