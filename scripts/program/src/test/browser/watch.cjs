// Drives the page of `yardloom watch` in headless Chromium. Prints one line for each thing that is
// wrong and ends with 1 then. usage: node watch.cjs ADDRESS PLAN FOLDER_FOR_PICTURES
// NODE_PATH must lead to puppeteer-core and axe-core; CHROMIUM names the browser.
const fs = require('fs');
const puppeteer = require('puppeteer-core');

const [address, plan, pictures] = process.argv.slice(2);
const faults = [];
const check = (what, fine) => { if (!fine) faults.push(what); };

(async () => {
  const browser = await puppeteer.launch({ executablePath: process.env.CHROMIUM || '/usr/bin/chromium', args: ['--no-sandbox'] });
  const page = await browser.newPage();
  const outside = [];
  page.on('request', r => { if (!r.url().startsWith(address)) outside.push(r.url()); });
  page.on('pageerror', e => faults.push('page error: ' + e.message));
  page.on('console', m => { if (m.type() === 'error') faults.push('console: ' + m.text()); });
  await page.setViewport({ width: 1360, height: 900 });
  await page.goto(address);
  await page.waitForSelector('#view svg', { timeout: 120000 });
  await page.screenshot({ path: pictures + '/desktop.png' });

  // Keyboard: zoom in, move; the place stays when the plan is drawn again.
  await page.focus('#view');
  await page.keyboard.press('+');
  await page.keyboard.press('ArrowRight');
  const box = () => page.$eval('#view svg', s => s.getAttribute('viewBox'));
  const near = await box();
  check('keys zoom and move', near !== await page.$eval('#view svg', s => s.dataset.paper));

  // A layer switched off stays off.
  const layer = await page.$eval('#layers input', i => { i.click(); return i.dataset.layer; });
  const hidden = () => page.$$eval('#view g.off', g => g.length);
  check('a layer is hidden', await hidden() > 0);

  // An element by keyboard: figures, script line, why.
  const bed = await page.$$eval('#element option', o => o.map(x => x.value).find(v => v.startsWith('bed')));
  await page.select('#element', bed);
  await page.waitForFunction(() => document.querySelector('#picked dd'));
  check('the script line of the element', /\.groovy:\d+: .*bed/i.test(await page.$eval('#picked dd', d => d.textContent)));
  check('figures of the element', await page.$$eval('#picked dd', d => d.length) > 1);
  await page.$$eval('#picked summary', all => all.find(s => s.textContent === 'Why').click());
  await page.waitForFunction(() => document.querySelector('#picked pre').textContent.length > 20, { timeout: 30000 });
  check('why', /area/.test(await page.$eval('#picked pre', p => p.textContent)));
  check('the element is marked', await page.$$eval('#view .picked', g => g.length) > 0);

  // A saved mistake stands over the last good picture with its line.
  const good = fs.readFileSync(plan, 'utf8');
  fs.writeFileSync(plan, good + "\nbedd 'x'\n");
  await page.waitForFunction(() => !document.getElementById('problems').hidden, { timeout: 60000 });
  check('the mistake and its line', /:\d+.*bedd/.test(await page.$eval('#problems', p => p.textContent)));
  check('the last good picture', await page.$('#view svg') !== null);
  await page.screenshot({ path: pictures + '/mistake.png' });
  fs.writeFileSync(plan, good);
  await page.waitForFunction(() => document.getElementById('problems').hidden, { timeout: 120000 });
  check('pan and zoom stay', near === await box());
  check('the layer stays off', await hidden() > 0);

  // A parameter by its field; what to write back.
  const field = await page.$('#parameters input[type=text]');
  if (field) {
    const name = await field.evaluate(f => f.id.slice(2));
    await page.evaluate(f => { f.value = '3.5 ft'; f.dispatchEvent(new Event('change')); }, field);
    await page.waitForFunction(() => document.getElementById('set-text').textContent.startsWith('--set'), { timeout: 120000 });
    check('the text to set', (await page.$eval('#set-text', t => t.textContent)) === '--set ' + name + '=3.5ft');
  }

  // Measuring, on the whole sheet.
  await page.click('#whole');
  await page.click('#measure');
  const view = await (await page.$('#view')).boundingBox();
  const p = (x, y) => page.mouse.click(view.x + view.width * x, view.y + view.height * y);
  await p(.3, .4); await p(.4, .4); await p(.4, .5);
  check('distance and area', /(ft|m), area .*(sq ft|m²)/.test(await page.$eval('#measured', m => m.textContent)));
  await page.screenshot({ path: pictures + '/measure.png' });

  for (const width of [1360, 390]) {
    await page.setViewport({ width, height: 850 });
    await page.evaluate(fs.readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8'));
    const found = await page.evaluate(() => window.axe.run());
    found.violations.filter(v => ['serious', 'critical'].includes(v.impact)).forEach(v =>
      faults.push('axe at ' + width + ': ' + v.id + ' ' + v.nodes.map(n => n.html.slice(0, 90)).slice(0, 3).join(' | ')));
    check('no sideways scrolling at ' + width, await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth));
  }
  await page.screenshot({ path: pictures + '/phone.png', fullPage: true });
  check('nothing from outside: ' + outside, outside.length === 0);
  await browser.close();
  faults.forEach(f => console.log(f));
  process.exit(faults.length ? 1 : 0);
})().catch(e => { console.log(String(e.stack)); process.exit(1); });
