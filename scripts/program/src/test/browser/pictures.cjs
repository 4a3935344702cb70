// Takes a picture of each page in headless Chromium, as wide and high as it says. usage:
// node pictures.cjs WIDTH HEIGHT PAGE PICTURE [WIDTH HEIGHT PAGE PICTURE …]
// NODE_PATH must lead to puppeteer-core; CHROMIUM names the browser.
const puppeteer = require('puppeteer-core');

(async () => {
  const browser = await puppeteer.launch({
    executablePath: process.env.CHROMIUM || '/usr/bin/chromium',
    // Letters as outlines, alike on every machine; colours as they are written.
    args: ['--no-sandbox', '--font-render-hinting=none', '--disable-lcd-text', '--force-color-profile=srgb'] });
  const page = await browser.newPage();
  page.on('request', r => { if (!/^(file|data):/.test(r.url())) console.log('asks for ' + r.url()); });
  const all = process.argv.slice(2);
  for (let i = 0; i < all.length; i += 4) {
    await page.setViewport({ width: +all[i], height: +all[i + 1] });
    await page.goto('file://' + all[i + 2]);
    const fonts = await page.evaluate(async () => { await document.fonts.ready; return [...document.fonts].filter(f => f.status === 'loaded').length; });
    if (fonts !== 2) console.log(all[i + 2] + ' has ' + fonts + ' of 2 fonts');
    await page.screenshot({ path: all[i + 3] });
  }
  await browser.close();
})().catch(e => { console.log(String(e)); process.exit(1); });
