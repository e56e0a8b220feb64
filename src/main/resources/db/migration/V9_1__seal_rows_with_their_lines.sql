-- Rows written with a line of the journal bear the version that their order came to with it: by it they are found and proven again.
-- Of rows written before that is not noted, and lines written before are sealed by their words alone.

alter table order_papers add column order_version integer default 0 not null;
alter table quotes add column order_version integer default 0 not null;
alter table hole_lives add column order_version integer default 0 not null;
create index hole_lives_by_order on hole_lives (order_number, order_version);

alter table journal add column order_version integer;
alter table journal add column written varchar(64);
alter table journal add column standing varchar(64);
