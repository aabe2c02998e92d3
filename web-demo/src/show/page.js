// The page of `backcut show`: one picture, replaced when the file changes, faults over it.
const picture = document.querySelector("#picture");
const panel = document.querySelector("#faults");
let version = 0;
let element;

async function show({ title, beats, moves, attributes }) {
  document.title = title;
  version += 1;
  if (!moves) {
    picture.replaceChildren(
      ...beats.map((name, i) => {
        const img = new Image();
        img.alt = name;
        img.src = `/beat-${i + 1}.svg?${version}`;
        return img;
      }),
    );
    return;
  }
  if (!element) {
    await import("/backcut/backcut.js");
    element = document.createElement("backcut-set");
    for (const [name, value] of Object.entries(attributes)) {
      if (value !== null) element.setAttribute(name, value);
    }
    picture.replaceChildren(element);
  }
  // Whoever writes looks at one instant: it stays in view over a save.
  const t = element.currentTime || 0;
  element.addEventListener("loadedmetadata", () => (element.currentTime = t), { once: true });
  element.setAttribute("src", `/set.json?${version}`);
}

function tell({ faults, more }) {
  panel.hidden = faults.length === 0;
  panel.querySelector("ol").replaceChildren(
    ...faults.map((fault) => {
      const item = document.createElement("li");
      const place = document.createElement("code");
      place.textContent = `line ${fault.line}, column ${fault.column}`;
      const told = [fault.found, fault.allowed].filter(Boolean).join("; ");
      item.append(place, ` ${told}.`, fault.help ? ` ${fault.help}` : "");
      return item;
    }),
  );
  panel.querySelector("p").textContent = more ? `${more} more` : "";
}

new EventSource("/events").onmessage = ({ data }) => {
  const state = JSON.parse(data);
  tell(state);
  if (state.title !== undefined) show(state);
};
