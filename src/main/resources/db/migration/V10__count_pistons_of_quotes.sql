-- How many of each number of piston a quote sells, so that no more of one are confirmed. Of quotes given before that is not noted.

alter table quote_pistons add column quantity integer default 0 not null;
