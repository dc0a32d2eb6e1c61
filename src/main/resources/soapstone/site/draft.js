/* Keeps what is typed while it is typed. Without this script a button does the same. */
(function () {
  'use strict';
  var WAIT = 1000;
  var AGAIN = 5000;
  var form = document.getElementById('draft');
  if (!form) {
    return;
  }
  var status = document.getElementById('kept');
  var alert = document.getElementById('newer');
  var says = form.dataset;
  var shared = form.hasAttribute('data-shared');
  var place = 'soapstone ' + says.draft;
  var sent = null;
  var timer = 0;
  var retry = 0;
  var dirty = false;
  var busy = false;
  var held = false;
  var leaving = false;

  function texts() {
    var all = {};
    for (var i = 0; i < form.elements.length; i++) {
      var field = form.elements[i];
      if (field.name.indexOf('box-') === 0 && (field.type !== 'radio' || field.checked)) {
        all[field.name.slice(4)] = field.value;
      }
    }
    return all;
  }

  function put(all) {
    for (var i = 0; i < form.elements.length; i++) {
      var field = form.elements[i];
      var text = field.name.indexOf('box-') === 0 ? all[field.name.slice(4)] : undefined;
      if (text !== undefined && field.type === 'radio') {
        field.checked = field.value === text;
      } else if (text !== undefined && field.value !== text) {
        field.value = text;
        field.dispatchEvent(new Event('input', { bubbles: true }));
      }
    }
  }

  function pairs(start, all) {
    return Object.keys(all).map(function (letter) {
      return '&' + start + letter + '=' + encodeURIComponent(all[letter]);
    }).join('');
  }

  /* What this page sent last goes along: when its answer was lost, it is not taken for somebody else's. */
  function body(all) {
    return ['form-key', 'round', 'draft'].map(function (name) {
      return name + '=' + encodeURIComponent(form.elements[name].value);
    }).join('&') + pairs('box-', all) + pairs('was-', sent || {});
  }

  /* On a browser of one's own, for as long as the connection or the session is away. */
  function store() {
    if (!shared) {
      sessionStorage.setItem(place, JSON.stringify({ round: form.elements.round.value, draft: form.elements.draft.value, typed: texts(), sent: sent }));
    }
  }

  function forget() {
    sessionStorage.removeItem(place);
  }

  function tell(text, link) {
    status.textContent = text;
    if (link) {
      var a = document.createElement('a');
      a.href = '/sign-in?then=' + encodeURIComponent(location.pathname);
      a.textContent = link;
      if (shared) {
        a.target = '_blank';
        a.rel = 'noopener';
      }
      status.appendChild(document.createTextNode(' '));
      status.appendChild(a);
    }
  }

  function later() {
    clearTimeout(retry);
    retry = setTimeout(save, AGAIN);
  }

  function offline() {
    tell(says.offline);
    store();
    later();
  }

  /* After signing in again in another window, this page needs the key of the new session. */
  function signedOut() {
    if (!status.querySelector('a')) {
      tell(says.signedOut, says.signIn);
    }
    store();
    var request = new XMLHttpRequest();
    request.open('GET', location.pathname);
    request.responseType = 'document';
    request.onload = function () {
      var fresh = request.response && request.response.getElementById('draft');
      if (fresh && fresh.elements.round.value === form.elements.round.value) {
        form.elements['form-key'].value = fresh.elements['form-key'].value;
        save();
      } else {
        later();
      }
    };
    request.onerror = later;
    request.send();
  }

  function button(text, act) {
    var b = document.createElement('button');
    b.type = 'button';
    b.textContent = text;
    b.addEventListener('click', function () {
      held = false;
      alert.textContent = '';
      alert.className = '';
      act();
    });
    return b;
  }

  function both(answer) {
    var mine = texts();
    var buttons = document.createElement('div');
    var p = document.createElement('p');
    held = true;
    alert.textContent = '';
    alert.className = 'again';
    p.textContent = answer.text;
    alert.appendChild(p);
    Object.keys(mine).forEach(function (letter) {
      var kept = answer.newer[letter] || '';
      if (kept !== mine[letter]) {
        var line = document.createElement('p');
        line.textContent = letter + '. ' + (kept ? says.there.replace('{0}', kept) : says.empty);
        alert.appendChild(line);
      }
    });
    form.elements.draft.value = answer.draft;
    buttons.className = 'buttons';
    buttons.appendChild(button(says.take, function () {
      put(answer.newer);
      forget();
    }));
    buttons.appendChild(button(says.stay, save));
    alert.appendChild(buttons);
    status.textContent = '';
  }

  function heard(answer, all) {
    if (answer.state === 'newer') {
      both(answer);
      return;
    }
    tell(answer.text);
    forget();
    if (answer.state === 'kept') {
      form.elements.draft.value = answer.draft;
      dirty = JSON.stringify(all) !== JSON.stringify(texts());
      if (dirty) {
        soon();
      }
    } else {
      dirty = false;
      held = true;
    }
  }

  function parsed(request) {
    try {
      return request.status === 200 ? JSON.parse(request.responseText) : null;
    } catch (e) {
      return null;
    }
  }

  function save() {
    clearTimeout(timer);
    clearTimeout(retry);
    if (busy || held) {
      return;
    }
    var all = texts();
    var request = new XMLHttpRequest();
    busy = true;
    request.open('POST', says.draft);
    request.setRequestHeader('Content-Type', 'application/x-www-form-urlencoded;charset=UTF-8');
    request.onload = function () {
      var answer = parsed(request);
      busy = false;
      if (answer) {
        heard(answer, all);
      } else if (request.status >= 500) {
        offline();
      } else {
        signedOut();
      }
    };
    request.onerror = function () {
      busy = false;
      offline();
    };
    request.send(body(all));
    sent = all;
  }

  function soon() {
    clearTimeout(timer);
    timer = setTimeout(save, WAIT);
  }

  function changed() {
    dirty = true;
    if (status.querySelector('a') === null) {
      status.textContent = '';
    }
    soon();
  }

  function leave() {
    if (dirty && !held && !leaving) {
      var all = texts();
      navigator.sendBeacon(says.draft, new Blob([body(all)], { type: 'application/x-www-form-urlencoded;charset=UTF-8' }));
      sent = all;
    }
  }

  function hidden(name, text) {
    var field = document.createElement('input');
    field.type = 'hidden';
    field.name = name;
    field.value = text;
    form.appendChild(field);
  }

  function submit() {
    leaving = true;
    forget();
    Object.keys(sent || {}).forEach(function (letter) {
      hidden('was-' + letter, sent[letter]);
    });
  }

  function restore() {
    var left = shared ? null : JSON.parse(sessionStorage.getItem(place));
    if (left && left.round === form.elements.round.value) {
      form.elements.draft.value = left.draft;
      sent = left.sent;
      put(left.typed);
      tell(says.brought);
      dirty = true;
      save();
    } else {
      forget();
    }
  }

  form.addEventListener('input', changed);
  form.addEventListener('change', changed);
  form.addEventListener('submit', submit);
  window.addEventListener('online', save);
  window.addEventListener('focus', function () {
    if (dirty && status.querySelector('a')) {
      save();
    }
  });
  window.addEventListener('pagehide', leave);
  document.addEventListener('visibilitychange', function () {
    if (document.visibilityState === 'hidden') {
      leave();
    }
  });
  restore();
}());
