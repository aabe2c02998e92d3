// Plays the set that the address of this page holds.

const said = document.getElementById("said");
const board = document.getElementById("board");
const words = said.textContent;
const set = document.createElement("backcut-set");

function open() {
  const { hash } = location;
  board.hidden = hash.length < 2;
  if (board.hidden) {
    said.textContent = "There is no set in this address. Open the whole link that you were sent.";
    set.remove();
  } else {
    said.textContent = words;
    set.setAttribute("src", hash);
    set.lang = new URLSearchParams(hash.slice(1)).get("lang") ?? document.documentElement.lang;
    board.append(set);
  }
}

addEventListener("hashchange", open);
open();
