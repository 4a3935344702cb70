'use strict';
(() => {
  // A place in a closed fold: open what holds it, also in browsers that do not do so by themselves.
  const reveal = () => {
    let place = null;
    try { place = document.getElementById(decodeURIComponent(location.hash.slice(1))); } catch (e) { return; }
    if (!place) return;
    for (let e = place; e; e = e.parentElement) if (e.tagName === 'DETAILS') e.open = true;
    const fold = place.querySelector(':scope > details');
    if (place.tagName === 'SECTION' && fold) fold.open = true;
    place.scrollIntoView();
    if (place.matches('figure.sheet')) place.querySelector('.close').focus();
  };
  addEventListener('hashchange', reveal);
  reveal();
  addEventListener('keydown', e => {
    const full = e.key === 'Escape' && document.querySelector('figure.sheet:target .close');
    if (full) full.click();
  });

  // Zoom by buttons; wheels and pinches are the browser's own.
  for (const figure of document.querySelectorAll('figure.sheet')) {
    const svg = figure.querySelector('.drawing > svg');
    let zoom = 1;
    const set = to => { zoom = Math.min(8, Math.max(1, to)); svg.style.width = zoom === 1 ? '' : zoom * 100 + '%'; };
    for (const [text, name, by] of [['+', 'Zoom in', 1.5], ['\u2212', 'Zoom out', 1 / 1.5]]) {
      const button = document.createElement('button');
      button.type = 'button';
      button.textContent = text;
      button.setAttribute('aria-label', name);
      button.onclick = () => set(zoom * by);
      figure.querySelector('.tools').append(' ', button);
    }
  }

  // Tables are sorted by the buttons of their heads, runs under a heading each by itself.
  const key = cell => cell.dataset.key === undefined ? cell.textContent.trim() : cell.dataset.key;
  const compare = (a, b) => {
    if (a === '' || b === '') return (a === '') - (b === '');
    const x = Number(a), y = Number(b);
    return isNaN(x) || isNaN(y) ? a.localeCompare(b, 'en', { numeric: true }) : x - y;
  };
  for (const table of document.querySelectorAll('table.sortable')) {
    const heads = [...table.tHead.rows[0].cells];
    heads.forEach((head, column) => {
      const button = document.createElement('button');
      button.type = 'button';
      button.append(...head.childNodes);
      head.append(button);
      button.onclick = () => {
        const down = head.getAttribute('aria-sort') === 'ascending';
        heads.forEach(h => h.removeAttribute('aria-sort'));
        head.setAttribute('aria-sort', down ? 'descending' : 'ascending');
        for (const body of table.tBodies) {
          const rows = [...body.rows].filter(r => !r.classList.contains('run'));
          rows.map(r => [key(r.cells[column]), r])
            .sort((a, b) => a[0] === '' || b[0] === '' || !down ? compare(a[0], b[0]) : compare(b[0], a[0]))
            .forEach(pair => body.append(pair[1]));
        }
      };
    });
  }

  // On paper everything is open.
  let opened = [];
  addEventListener('beforeprint', () => {
    opened = [...document.querySelectorAll('details:not([open])')];
    opened.forEach(d => { d.open = true; });
  });
  addEventListener('afterprint', () => opened.forEach(d => { d.open = false; }));
})();
