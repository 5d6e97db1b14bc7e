// Remembers the kitchen that a reader cooks in. The page works without: this only saves choosing again.
const key = 'retare-kitchen';

/** What was stored may be anything, and storage may be shut. */
const remembered = () => {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
};

const remember = (kitchen) => {
  try {
    localStorage.setItem(key, kitchen);
  } catch {
    // A reader who keeps nothing chooses again.
  }
};

/** A first guess from the browser's languages alone: en-GB asks for the kitchen that lists GB. */
const guessed = (options) => {
  for (const language of navigator.languages ?? []) {
    const region = language.split('-').find((part, index) => index > 0 && /^[A-Z]{2}$/.test(part));
    const match = region && options.find((option) => option.dataset.regions?.split(' ').includes(region));
    if (match) return match.value;
  }
  return null;
};

const choose = (kitchen) => {
  for (const select of document.querySelectorAll('retare-kitchens select')) {
    if ([...select.options].some((option) => option.value === kitchen)) select.value = kitchen;
  }
};

/** A reader who chooses again has left the link's kitchen behind: the address must not bring it back. */
const forgetLink = () => {
  const url = new URL(location.href);
  if (!url.searchParams.has('kitchen')) return;
  url.searchParams.delete('kitchen');
  history.replaceState(history.state, '', url);
};

class RetareKitchens extends HTMLElement {
  connectedCallback() {
    const select = this.querySelector('select');
    if (!select) return;
    const options = [...select.options];
    const wanted = [new URLSearchParams(location.search).get('kitchen'), remembered(), guessed(options)];
    const first = wanted.find((kitchen) => options.some((option) => option.value === kitchen));
    if (first) select.value = first;
    select.addEventListener('change', () => {
      remember(select.value);
      choose(select.value);
      forgetLink();
    });
  }
}

if (!customElements.get('retare-kitchens')) customElements.define('retare-kitchens', RetareKitchens);
