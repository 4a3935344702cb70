// Reads a report in headless Chromium, as on a telephone and on a desk. Prints one line for each
// thing that is wrong and ends with 1 then. usage: node report.cjs FILE FOLDER_FOR_PICTURES
// NODE_PATH must lead to puppeteer-core and axe-core; CHROMIUM names the browser.
const fs = require('fs');
const puppeteer = require('puppeteer-core');

const [file, pictures] = process.argv.slice(2);
const faults = [];
const check = (what, fine) => { if (!fine) faults.push(what); };

(async () => {
  const browser = await puppeteer.launch({ executablePath: process.env.CHROMIUM || '/usr/bin/chromium', args: ['--no-sandbox'] });
  const page = await browser.newPage();
  page.on('request', r => check('asks for ' + r.url(), r.url().startsWith('file:')));
  page.on('pageerror', e => faults.push('page error: ' + e.message));
  page.on('console', m => { if (m.type() === 'error') faults.push('console: ' + m.text()); });
  const address = 'file://' + file;
  const narrow = async what => {
    const [wide, room] = await page.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
    check(what + ' is ' + wide + ' wide on ' + room, wide <= room);
  };
  const axe = async what => {
    await page.evaluate(fs.readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8'));
    const found = await page.evaluate(() => window.axe.run(document, {
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'], resultTypes: ['violations'] }));
    check('axe saw nothing of ' + what, found.passes.length > 10);
    found.violations.filter(v => ['serious', 'critical'].includes(v.impact)).forEach(v =>
      faults.push('axe, ' + what + ': ' + v.id + ' ' + v.nodes.map(n => n.html.slice(0, 90)).slice(0, 3).join(' | ')));
  };
  const open = () => page.evaluate(() => document.querySelectorAll('details').forEach(d => { d.open = true; }));

  // A telephone: five screens of 844 dots hold the story.
  for (const width of [390, 320]) {
    await page.setViewport({ width, height: 844 });
    await page.goto(address);
    await narrow('the closed page');
    if (width === 390) {
      const end = await page.evaluate(() => {
        const parts = ['charts', 'findings'].map(id => document.getElementById(id)).filter(e => e);
        return Math.max(...parts.map(e => e.getBoundingClientRect().bottom + scrollY));
      });
      check('the story ends at ' + Math.round(end), end <= 5 * 844);
      await page.screenshot({ path: pictures + '/phone.png', fullPage: true });
      await axe('closed on a telephone');
    }
    await open();
    await narrow('the open page');
  }
  await axe('open on a telephone');

  // A desk.
  await page.setViewport({ width: 1360, height: 900 });
  await page.goto(address);
  await narrow('the page on a desk');
  await page.screenshot({ path: pictures + '/desk.png', fullPage: true });
  await open();
  await axe('open on a desk');
  await page.goto(address);

  // A link into a closed fold opens it; by keyboard the table is sorted, up and down.
  await page.evaluate(() => { location.hash = '#table-areas'; });
  await page.waitForFunction(() => document.getElementById('table-areas').checkVisibility());
  const column = () => page.$$eval('#table-areas tbody td:nth-child(2)', all => all.map(c => Number(c.dataset.key)));
  const sorted = (all, sign) => all.every((v, i) => i === 0 || sign * (v - all[i - 1]) >= 0);
  const head = '#table-areas thead th:nth-child(2)';
  const total = await page.$eval('#table-areas tfoot', f => f.textContent);
  for (const [sign, said] of [[1, 'ascending'], [-1, 'descending']]) {
    await page.focus(head + ' button');
    await page.keyboard.press('Enter');
    const now = await column();
    check('sorted ' + said + ': ' + now, now.length > 2 && sorted(now, sign));
    check('aria-sort ' + said, await page.$eval(head, h => h.getAttribute('aria-sort')) === said);
  }
  check('totals stay last', total === await page.$eval('#table-areas tfoot', f => f.textContent));

  // A layer is switched by keyboard; the drawing is opened full, zoomed and closed again.
  await page.evaluate(() => { location.hash = '#map'; });
  const [box, target] = await page.$eval('#map fieldset input:not(:checked)', i => {
    i.focus();
    return [i.id, i.id.replace('switch', 'map')];
  });
  const shown = () => page.$eval('#' + target, g => getComputedStyle(g).display !== 'none');
  check('a layer is hidden at first', !await shown());
  await page.keyboard.press('Space');
  check('a layer is shown', await shown() && await page.$eval('#' + box, i => i.checked));
  await page.$eval('#map-figure .full', a => a.click());
  const width = () => page.$eval('#map-figure .drawing > svg', s => s.getBoundingClientRect().width);
  const full = () => page.$eval('#map-figure', f => getComputedStyle(f).position === 'fixed');
  check('the drawing is full', await full());
  const before = await width();
  await page.$eval('#map-figure [aria-label="Zoom in"]', b => b.click());
  check('zoomed in', await width() > before * 1.2);
  await page.keyboard.press('Escape');
  await page.waitForFunction(() => getComputedStyle(document.getElementById('map-figure')).position !== 'fixed');

  // On paper the charts stay, and buttons go.
  await page.emulateMediaType('print');
  const visible = of => page.$$eval(of, all => all.filter(e => getComputedStyle(e).display !== 'none').length);
  check('bars on paper', await visible('.chart rect.bar') > 20);
  check('no buttons on paper', await visible('p.tools') === 0);

  await browser.close();
  faults.forEach(f => console.log(f));
  process.exit(faults.length ? 1 : 0);
})().catch(e => { console.log(String(e.stack)); process.exit(1); });
