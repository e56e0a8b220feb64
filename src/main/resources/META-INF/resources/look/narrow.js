// Narrows a list while words are typed: each must begin a word of what is shown, as when the form is sent.
"use strict";
for (const field of document.querySelectorAll("[data-narrows]")) {
  const list = document.querySelector(field.dataset.narrows);
  const count = document.getElementById(field.getAttribute("aria-describedby"));
  if (!list) continue;
  const words = (text) => text.toLowerCase().split(/[^\p{L}\p{N}.]+/u).filter(Boolean);
  const narrow = () => {
    const sought = words(field.value);
    let left = 0;
    for (const item of list.children) {
      const has = words(item.textContent);
      item.hidden = !sought.every((word) => has.some((other) => other.startsWith(word)));
      if (!item.hidden) left++;
    }
    count.textContent = left === 1 ? "1 engine" : left + " engines";
  };
  field.addEventListener("input", narrow);
}
