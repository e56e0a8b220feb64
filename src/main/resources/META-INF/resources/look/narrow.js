// Narrows a list while words are typed: each must begin a word of the engine, as when the form is sent. Of a list in pages only the server knows all.
"use strict";
for (const field of document.querySelectorAll("[data-narrows]")) {
  const list = document.querySelector(field.dataset.narrows);
  const count = document.getElementById(field.getAttribute("aria-describedby"));
  if (!list || "partly" in list.dataset) continue;
  const words = (text) =>
    text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase().match(/[\p{L}\p{N}]+(\.[\p{L}\p{N}]+)*/gu) || [];
  const own = (item) => words([item.dataset.code, item.dataset.code.replaceAll("-", ""), item.dataset.words].join(" "));
  const narrow = () => {
    const sought = words(field.value);
    let left = 0;
    for (const item of list.children) {
      const has = own(item);
      item.hidden = !sought.every((word) => has.some((other) => other.startsWith(word)));
      if (!item.hidden) left++;
    }
    count.textContent = left === 1 ? "1 engine" : left + " engines";
  };
  field.addEventListener("input", narrow);
}
