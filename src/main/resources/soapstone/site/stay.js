/* Says two minutes before that one is signed out for doing nothing, and keeps one in at a click. The server signs out by itself. */
(function () {
  'use strict';
  var SECOND = 1000;
  var box = document.getElementById('stay');
  if (!box) {
    return;
  }
  var says = box.dataset;
  var warnsAt = 0;
  var endsAt = 0;
  var shown = '';
  var timer = 0;

  function set(warns, ends) {
    warnsAt = Date.now() + warns * SECOND;
    endsAt = Date.now() + ends * SECOND;
    look();
  }

  function clear() {
    shown = '';
    box.textContent = '';
    box.className = 'stay';
    document.documentElement.classList.remove('warned');
  }

  function put(state, text, control) {
    if (shown === state) {
      return;
    }
    var p = document.createElement('p');
    shown = state;
    box.textContent = '';
    box.className = 'stay told';
    document.documentElement.classList.add('warned');
    p.textContent = text;
    box.appendChild(p);
    box.appendChild(control);
  }

  function ask(method, then) {
    var request = new XMLHttpRequest();
    request.open(method, '/stay');
    request.setRequestHeader('Content-Type', 'application/x-www-form-urlencoded;charset=UTF-8');
    request.onload = function () {
      var answer = null;
      try {
        answer = request.status === 200 ? JSON.parse(request.responseText) : null;
      } catch (e) {
        answer = null;
      }
      then(answer);
    };
    request.onerror = function () { then(null); };
    request.send(method === 'POST' ? 'form-key=' + encodeURIComponent(says.key) : null);
  }

  function stay() {
    ask('POST', function (answer) {
      if (answer && answer.ends > 0) {
        clear();
        set(answer.warns, answer.ends);
      } else {
        endsAt = Date.now();
        look();
      }
    });
  }

  function button() {
    var b = document.createElement('button');
    b.type = 'button';
    b.textContent = says.button;
    b.addEventListener('click', stay);
    return b;
  }

  function signIn() {
    return '/sign-in?then=' + encodeURIComponent(location.pathname);
  }

  function link() {
    var a = document.createElement('a');
    a.className = 'button';
    a.href = signIn();
    a.textContent = says.signIn;
    return a;
  }

  /* On a machine of several people nothing of this page may be left to the next one. */
  function over() {
    if (says.tablet) {
      location.replace(signIn());
    } else {
      put('over', says.over, link());
    }
  }

  function clock(time) {
    var at = new Date(time);
    return ('0' + at.getHours()).slice(-2) + ':' + ('0' + at.getMinutes()).slice(-2);
  }

  /* Another window of the same browser may have kept the session alive: it is asked for, which makes it no longer. */
  function sure(act) {
    ask('GET', function (answer) {
      if (answer && answer.ends > 0 && Date.now() + answer.warns * SECOND > warnsAt + 5 * SECOND) {
        clear();
        set(answer.warns, answer.ends);
      } else if (act === over && answer && answer.ends > 0) {
        set(answer.warns, answer.ends);
      } else {
        act();
      }
    });
  }

  function warn() {
    put('soon', says.soon.replace('{0}', clock(endsAt)), button());
    next();
  }

  function next() {
    clearTimeout(timer);
    var until = (Date.now() < warnsAt ? warnsAt : endsAt + SECOND) - Date.now();
    timer = setTimeout(look, Math.max(SECOND, until));
  }

  function look() {
    if (shown === 'over') {
      return;
    }
    if (Date.now() >= endsAt) {
      sure(over);
    } else if (Date.now() >= warnsAt && shown !== 'soon') {
      sure(warn);
    } else {
      next();
    }
  }

  /* Timers stand still while a tablet sleeps. */
  document.addEventListener('visibilitychange', function () {
    if (document.visibilityState === 'visible') {
      look();
    }
  });
  set(Number(says.warns), Number(says.ends));
}());
