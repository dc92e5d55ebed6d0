// What the program said to something that it would not do. It stands above the
// entries until the next thing is asked for.

export class Refusal extends Error {}

// sentence is what a page of refusal says.
export function sentence(html) {
  const main = new DOMParser().parseFromString(html, "text/html").getElementById("main");
  return (main?.querySelector("p") ?? main)?.textContent.replace(/\s+/g, " ").trim() || "The answer could not be read.";
}

// tell shows a refusal; an empty one clears it.
export function tell(text) {
  const place = document.getElementById("refusal");
  place.replaceChildren();
  if (!text) return;
  const notice = document.createElement("p");
  notice.className = "notice notice-refused";
  notice.textContent = text;
  place.append(notice);
  notice.scrollIntoView({ block: "nearest" }); // the buttons in the bar are pressed from anywhere
}
