-- How long records are kept: one row, as soon as a keeper has decided anything.
create table retention (
  id           int primary key check (id = 1),
  -- The last day of a school year.
  year_month   int not null,
  year_day     int not null,
  -- Whether it is done each day without anybody's hand.
  by_itself    boolean not null,
  -- Whoever of several programs moves this on does the day's work.
  next_at      timestamp with time zone not null
);

-- A drill or a make-up that is asked for twice at the same moment is one: a hash of what was asked for.
alter table assignment add column once char(64);
create unique index assignment_once on assignment (once);
