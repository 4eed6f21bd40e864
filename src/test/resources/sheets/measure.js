// Tells the page around it what is wrong with this one: its width, and words that lie on words.
addEventListener('load', () => {
  const found = ['measured'];
  const root = document.documentElement;
  if (root.scrollWidth > root.clientWidth + 1) {
    found.push('the page is wider than the screen: ' + root.scrollWidth + ' of ' + root.clientWidth);
  }
  const boxes = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (walker.nextNode()) {
    const node = walker.currentNode;
    const text = node.textContent.trim();
    if (!text || node.parentElement.closest('script,style,title,desc')) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    for (const box of range.getClientRects()) {
      if (box.width > 1 && box.height > 1) boxes.push({text, node, box});
    }
  }
  boxes.sort((a, b) => a.box.top - b.box.top);
  const slack = 2.5;
  for (let i = 0; i < boxes.length; i++) {
    const a = boxes[i];
    for (let j = i + 1; j < boxes.length && boxes[j].box.top < a.box.bottom - slack; j++) {
      const b = boxes[j];
      if (a.node === b.node) continue;
      const wide = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
      const high = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
      if (wide > slack && high > slack + 0.2 * Math.min(a.box.height, b.box.height)) {
        found.push("'" + a.text.slice(0, 40) + "' lies on '" + b.text.slice(0, 40) + "'");
      }
    }
  }
  parent.postMessage(found.join('\n'), '*');
});
