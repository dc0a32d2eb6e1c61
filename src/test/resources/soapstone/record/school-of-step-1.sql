-- A school as the first step of the tables kept it: rows of every table. Everybody's passphrase is "a long enough sentence".

insert into school (id, name, demo, created) values
  (1, 'Alder Street Shop', false, '2027-03-16T07:00:00Z');

insert into person (id, kind, shown, login, password, must_change, factor, factor_step, language, disabled, created) values
  (1, 'INSTRUCTOR', 'Wren K.', 'wren', '$argon2id$v=19$m=19456,t=2,p=1$BMJQB8j2xDvomHnicLO+pA$+bavMzB3sZE2D8U2YVtqBcO2+PGpFLWcOd8aS8UN4Xg', false, null, 0, 'en', false, '2027-03-16T07:00:00Z'),
  (2, 'KEEPER', 'Keeper', 'alder-keeper', '$argon2id$v=19$m=19456,t=2,p=1$BMJQB8j2xDvomHnicLO+pA$+bavMzB3sZE2D8U2YVtqBcO2+PGpFLWcOd8aS8UN4Xg', false, null, 0, 'en', false, '2027-03-16T07:00:00Z'),
  (3, 'STUDENT', 'Ada Q.', 'alder-ada', '$argon2id$v=19$m=19456,t=2,p=1$BMJQB8j2xDvomHnicLO+pA$+bavMzB3sZE2D8U2YVtqBcO2+PGpFLWcOd8aS8UN4Xg', false, null, 0, 'en', false, '2027-03-16T07:00:00Z'),
  (4, 'STUDENT', 'Bo T.', 'alder-bo', '$argon2id$v=19$m=19456,t=2,p=1$BMJQB8j2xDvomHnicLO+pA$+bavMzB3sZE2D8U2YVtqBcO2+PGpFLWcOd8aS8UN4Xg', false, null, 0, 'en', false, '2027-03-16T07:00:00Z'),
  (5, 'STUDENT', '–', 'erased-5', null, false, null, 0, 'en', true, '2027-03-16T07:00:00Z');

insert into class (id, name, term, code, settings, created, archived) values
  (1, 'Sheet metal 1', 'Spring', 'ALDER7', '{"units":"US","language":"en","decimalMark":".","carriedEarns":true,"coarseEarns":true,"nearEarns":0.0,"bareAllowed":true,"conventions":""}', '2027-03-16T07:00:00Z', null);

insert into teaches (class, person) values
  (1, 1);

insert into member (class, person, seat, state, extra_time, sourced_id, since) values
  (1, 3, '1', 'IN', 0, 'u-104', '2027-03-16T07:00:00Z'),
  (1, 4, '2', 'IN', 0, '', '2027-03-16T07:00:00Z'),
  (1, 5, '', 'LEFT', 0, '', '2027-03-16T07:00:00Z');

insert into assignment (id, class, title, state, opens, due, late, tries, shows, formulas, made_by, made, after) values
  (1, 1, 'Holes', 'GIVEN', '2027-03-16T07:00:00Z', '2027-03-18T07:00:00Z', 'HALF', 3, 'MISTAKE', true, 1, '2027-03-16T07:00:00Z', null);

insert into task (id, assignment, place, exercises, many, points) values
  (1, 1, 1, 'spacing/bolt-holes', 1, 4.0);

insert into given_to (assignment, person, due, excused, only_these) values
  (1, 4, '2027-03-21T07:00:00Z', false, false);

insert into sheet (id, assignment, person, number, made) values
  (1, 1, 3, 'A1', '2027-03-16T07:00:00Z'),
  (2, 1, 4, 'A2', '2027-03-16T07:00:00Z');

insert into problem (id, sheet, task, place, round, exercise, seed, units, fingerprint, points) values
  (1, 1, 1, 1, 1, 'spacing/bolt-holes', 471564590, 'US', '0baf5dcdda6e5917', 4.0),
  (2, 2, 1, 1, 1, 'spacing/bolt-holes', 460460016, 'US', '0baf5dcdda6e5917', 4.0);

insert into draft (problem, letter, typed, saved) values
  (2, 'a', '8-5/16″', '2027-03-16T07:01:00Z');

insert into attempt (id, problem, number, receipt, handed_in, late, way, program, fingerprint) values
  (1, 1, 1, 'receipt1', '2027-03-16T07:10:00Z', false, 'SCREEN', '0.2.0', '0baf5dcdda6e5917');

insert into mark (attempt, place, ask, letter, typed, read_as, verdict, slip, families, says, points, possible, odds) values
  (1, 0, 'pitch', 'a', '7 5/16"', '7 5/16 in', 'UNEXPLAINED', '', '', 'Not right, and no known mistake gives it.', 0.0, 4.0, 0.008231299363538312);

insert into remark (id, attempt, place, at, by_person, cause, verdict, points, reason) values
  (1, 1, 0, '2027-03-16T07:11:40Z', 1, 'OVERRULED', 'NEAR', 2.0, 'Read the rule; see "her" sketch');

insert into whole_text (fingerprint, content, kept) values
  ('0baf5dcdda6e5917', 'language 1
title: Bolt holes along an angle
skill: equal-spacing
level: 1
story: "The sap tank for Kettle Ridge sits on steel angle. One {length} length of angle gets {holes} bolt holes on one line. The first and the last are centered {edge} from the ends."
notes:
  - "All spaces are equal, center to center."
  - "The holes are {hole} across."
given:
  length: {from: 30 in, to: 120 in, step: 1/2 in}
  holes: {from: 4, to: 14}
  edge: {from: 3/4 in, to: 3 in, step: 1/4 in}
  hole: {pick: [3/8 in, 7/16 in, 9/16 in]}
where:
  - pitch >= 3 * hole          # could really be made: steel is left between the holes
  - edge >= 1.25 * hole        # and between hole and end
working:
  - let: span = length - 2*edge
    say: "Take the edge distance off both ends. What is left runs from the first center to the last."
  - let: spaces = holes - 1
    say: "Count the spaces between the holes: one fewer than the holes."
  - let: pitch = span/spaces
    say: "Share the span out over the spaces."
    show: 0.001 in
after:
  - let: last = edge + (holes - 1)*pitch
    show: 1/16 in
  - let: over = last - (length - edge)
    show: 1/16 in
  - let: short = length - edge - last
    show: 1/16 in
  - let: past = last - length
    show: 1/16 in
ask:
  - {find: pitch, kind: quantity, prompt: "Center-to-center spacing of the holes", to: 1/16 in, within: 1/32 in}
slips:
  - name: shared-over-holes
    family: fence-post
    swap: spaces = holes
    say: "This answer fits sharing the span out over the {theirs.spaces} holes. Between {holes} holes there are {spaces} spaces: touch your fingers and count what is between them."
  - name: one-space-too-many
    family: ends-of-the-row
    swap: spaces = holes + 1
    say: "This answer fits {theirs.spaces} spaces, one more than the holes. That is for a row with an empty space at both ends. Here a hole sits at each end of the span, so there are {spaces}."
  - name: one-end-only
    family: one-of-two
    swap: span = length - edge
    say: "This answer fits a span of {theirs.span}: the {edge} came off one end. It comes off both ends, which leaves {span}."
  - name: ends-left-in
    family: allowance-forgotten
    swap: span = length
    say: "This answer fits sharing out the whole {length}. The first and the last hole stand {edge} from the ends, so {span} are left to share."
figure: {kind: hole-row, length: length, first: edge, pitch: pitch, count: holes, diameter: hole}
consequence:
  - if: past > 1/16 in
    say: "Marked out like this from the left, the last hole would be {past} past the end of the steel."
  - if: over > 1/16 in
    say: "The last hole would land {over} past its place, too near the end of the angle."
  - if: short > 1/16 in
    say: "The last hole would stop {short} short of its place, and the bolt would not meet its hole in the tank leg."
metric:
  given:
    length: {from: 800 mm, to: 3000 mm, step: 10 mm}
    edge: {from: 20 mm, to: 75 mm, step: 5 mm}
    hole: {pick: [10 mm, 12 mm, 14 mm]}
  ask:
    pitch: {to: 1 mm, within: 0.5 mm}
  show: {pitch: 0.01 mm, last: 1 mm, over: 1 mm, short: 1 mm, past: 1 mm}
checks:
  - {source: "Own value, worked by hand: 48 in in 4 spaces.", kind: own, given: {length: 50 in, holes: 5, edge: 1 in}, expect: {pitch: 12 in}, within: 0.001 in}
  - {source: "Own value, worked by hand: 58 1/2 in in 7 spaces. Shared over the 8 holes it would be 7 5/16 in.", kind: own, given: {length: 61 1/2 in, holes: 8, edge: 1 1/2 in}, expect: {span: 58 1/2 in, spaces: 7, pitch: 8.3571 in}, within: 0.0001 in}
  - {source: "Own value, worked by hand: 1440 mm in 12 spaces.", kind: own, units: metric, given: {length: 1500 mm, holes: 13, edge: 30 mm}, expect: {pitch: 120 mm}, within: 0.01 mm}
caution: none
', '2027-03-16T07:00:00Z');

insert into competency (id, class, frame, edition, code, title, skills) values
  (1, 1, '', '', 'S1', 'Lays out holes', 'equal-spacing');

insert into signoff (id, person, class, frame, edition, code, title, act, conditions, evidence, by_person, by_name, at) values
  (1, 3, 1, '', '', 'S1', 'Lays out holes', 'SIGNED', 'At the bench, alone', 'one line', 1, 'Wren K.', '2027-03-16T07:00:00Z');

insert into note (id, person, class, at, asks, outcome, answer, answered, by_person, by_name) values
  (1, 3, 1, '2027-03-16T07:00:00Z', 'My second try is missing', 'OPEN', '', null, null, '');

insert into audit (id, at, by_person, act, about_person, about_class, detail, left_school) values
  (1, '2027-03-16T07:00:00Z', 1, 'mark.overruled', 3, 1, 'Holes', false);

insert into erased (person, at, by_person) values
  (5, '2027-03-16T07:00:00Z', 1);

insert into session (token, person, form_key, tablet, begun, seen) values
  ('aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa', 1, 'kkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkk', false, '2027-03-16T07:00:00Z', '2027-03-16T07:00:00Z');

insert into throttle (subject, failures, free_at) values
  ('login x', 1, '2027-03-16T07:00:00Z');

insert into once_code (code, purpose, person, ends, used) values
  ('bbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbb', 'NEW_PASSWORD', 4, '2027-03-16T07:00:00Z', null);

alter table person alter column id restart with 100;
alter table class alter column id restart with 100;
alter table assignment alter column id restart with 100;
alter table task alter column id restart with 100;
alter table sheet alter column id restart with 100;
alter table problem alter column id restart with 100;
alter table attempt alter column id restart with 100;
alter table remark alter column id restart with 100;
alter table competency alter column id restart with 100;
alter table signoff alter column id restart with 100;
alter table note alter column id restart with 100;
alter table audit alter column id restart with 100;
