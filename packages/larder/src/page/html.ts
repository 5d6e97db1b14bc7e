/** Text for a place in HTML between tags or in a quoted attribute. */
export function escapeHtml(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => entities[sign] ?? sign);
}

const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** An element with its inner HTML, which must be escaped already. */
export function element(tag: string, inner: string, attributes: Readonly<Record<string, string>> = {}): string {
  const written = Object.entries(attributes).map(([name, value]) => ` ${name}="${escapeHtml(value)}"`);
  return `<${tag}${written.join('')}>${inner}</${tag}>`;
}
