-- What the class had set of the shop's conventions when a problem was dealt, as a text such as "k_factor=0.42; saw_kerf=0.125 in":
-- with it, seed and fingerprint bring the same numbers back whatever the class sets later.
alter table problem add column conventions varchar(1000) not null default '';
