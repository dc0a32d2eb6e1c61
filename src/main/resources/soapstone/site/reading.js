/* Shows how an answer reads while it is typed. Without this script the button does the same. */
(function () {
  'use strict';
  var WAIT = 300;
  var SVG = 'http://www.w3.org/2000/svg';
  var marks = { READ: 'M2.5 6h11M2.5 10.5h11', ASKED_AGAIN: 'M4.5 5.5C4.5 1.5 11.5 1.5 11.5 5.5 11.5 8.2 8 7.8 8 10.5M8 12.8v1.7' };

  function wayOf(field) {
    var list = field.getAttribute('data-way');
    return list ? document.getElementById(list).value : field.getAttribute('data-reads');
  }

  function mark(state) {
    var svg = document.createElementNS(SVG, 'svg');
    var path = document.createElementNS(SVG, 'path');
    svg.setAttribute('class', 'mark');
    svg.setAttribute('viewBox', '0 0 16 16');
    svg.setAttribute('width', '16');
    svg.setAttribute('height', '16');
    svg.setAttribute('aria-hidden', 'true');
    path.setAttribute('d', marks[state]);
    svg.appendChild(path);
    return svg;
  }

  function show(field, answer) {
    var box = field.parentNode.parentNode;
    var says = box.querySelector('.says');
    var text = document.createElement('p');
    says.textContent = '';
    box.className = 'box is-' + answer.state.toLowerCase().replace('_', '-');
    if (answer.state === 'ASKED_AGAIN') {
      field.setAttribute('aria-invalid', 'true');
    } else {
      field.removeAttribute('aria-invalid');
    }
    if (!marks[answer.state]) {
      return;
    }
    text.textContent = answer.text;
    says.appendChild(mark(answer.state));
    says.appendChild(text);
  }

  function ask(field) {
    var typed = field.value;
    var request = new XMLHttpRequest();
    request.open('POST', (document.documentElement.getAttribute('data-base') || '') + '/read-answer');
    request.setRequestHeader('Content-Type', 'application/x-www-form-urlencoded;charset=UTF-8');
    request.onload = function () {
      if (request.status === 200 && field.value === typed) {
        show(field, JSON.parse(request.responseText));
      }
    };
    request.send('reads=' + encodeURIComponent(wayOf(field)) + '&typed=' + encodeURIComponent(typed) +
      (field.hasAttribute('data-marking') ? '&marking=yes' : ''));
  }

  function watch(field) {
    var timer = 0;
    field.addEventListener('input', function () {
      clearTimeout(timer);
      timer = setTimeout(function () { ask(field); }, WAIT);
    });
  }

  var fields = document.querySelectorAll('[data-reads]');
  for (var i = 0; i < fields.length; i++) {
    if (!fields[i].readOnly) {
      watch(fields[i]);
    }
  }
}());
