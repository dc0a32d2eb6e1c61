/* Looks again at a class at work. Without this script the link "Look again now" does the same. */
(function () {
  'use strict';
  /* A page that is forgotten overnight must not keep its session alive. */
  var LONGEST = 2 * 60 * 60 * 1000;
  var part = document.getElementById('live');
  var state = document.getElementById('live-state');
  var EVERY = Number(part.getAttribute('data-every')) || 5000;
  var begun = Date.now();

  function tell(text) {
    if (state.textContent !== text) {
      state.textContent = text;
    }
  }

  function put(html) {
    var scroll = part.querySelector('.scroll');
    var left = scroll ? scroll.scrollLeft : 0;
    var inside = part.contains(document.activeElement) ? document.activeElement : null;
    var address = inside && inside.getAttribute('href');
    part.innerHTML = html;
    scroll = part.querySelector('.scroll');
    if (scroll) {
      scroll.scrollLeft = left;
    }
    if (inside) {
      var again = address ? part.querySelector('a[href="' + address + '"]') : scroll;
      if (again) {
        again.focus({ preventScroll: true });
      }
    }
  }

  function over() {
    tell(state.getAttribute('data-over'));
  }

  function look() {
    if (Date.now() - begun > LONGEST) {
      over();
      return;
    }
    if (document.hidden) {
      setTimeout(look, EVERY);
      return;
    }
    fetch(part.getAttribute('data-from'), { credentials: 'same-origin', redirect: 'manual', cache: 'no-store' }).then(function (reply) {
      if (reply.status >= 500) {
        throw new Error('busy');
      }
      if (!reply.ok) {
        over();
        return null;
      }
      return reply.text().then(function (html) {
        put(html);
        tell('');
        if (!part.querySelector('[data-done]')) {
          setTimeout(look, EVERY);
        }
      });
    }).catch(function () {
      tell(state.getAttribute('data-lost'));
      setTimeout(look, EVERY);
    });
  }

  setTimeout(look, EVERY);
}());
