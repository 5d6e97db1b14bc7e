/** Shows the filter, which nobody needs to read the page, and hides what does not have its words. */
export const filterScript = `
const box = document.querySelector('.filter');
const input = box.querySelector('input');
const count = box.querySelector('output');
const foods = [...document.querySelectorAll('article')];
const letters = document.querySelector('nav');
const sections = [...document.querySelectorAll('main section')];
const show = () => {
  const words = input.value.toLowerCase().split(/\\s+/).filter(Boolean);
  let shown = 0;
  for (const food of foods) {
    const has = words.every((word) => food.dataset.words.includes(word));
    food.hidden = !has;
    if (has) shown += 1;
  }
  for (const section of sections) {
    const own = section.querySelectorAll('article');
    section.hidden = own.length > 0 && [...own].every((food) => food.hidden);
  }
  letters.hidden = words.length > 0;
  count.textContent = words.length === 0 ? '' : shown + (shown === 1 ? ' food' : ' foods');
};
input.addEventListener('input', show);
box.hidden = false;
show();
`.trim();
