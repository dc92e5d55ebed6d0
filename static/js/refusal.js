// What the program said to something that it would not do. It stands above the
// entries until the next thing is asked for.

export class Refusal extends Error {}

// said is what a page of refusal says: its sentence and its list.
export function said(html) {
  const main = new DOMParser().parseFromString(html, "text/html").getElementById("main");
  const plain = (e) => e.textContent.replace(/\s+/g, " ").trim();
  const first = main?.querySelector("p") ?? main;
  return { text: (first && plain(first)) || "The answer could not be read.", lines: [...(main?.querySelectorAll("li") ?? [])].map(plain) };
}

export const sentence = (html) => said(html).text;

// tell shows a refusal; an empty one clears it.
export function tell(text, lines = []) {
  const place = document.getElementById("refusal");
  place.replaceChildren();
  if (!text) return;
  const notice = document.createElement("div");
  notice.className = "notice notice-refused";
  notice.append(element("p", text));
  if (lines.length > 0) {
    const list = document.createElement("ul");
    list.append(...lines.map((line) => element("li", line)));
    notice.append(list);
  }
  place.append(notice);
  notice.scrollIntoView({ block: "nearest" }); // the buttons in the bar are pressed from anywhere
}

function element(name, text) {
  const e = document.createElement(name);
  e.textContent = text;
  return e;
}
