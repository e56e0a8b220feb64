-- Which ring sets a quote sells to run on its pistons, so that no others are signed. Of quotes given before it is not known.

create table quote_ring_sets (
    quote bigint not null references quotes (id),
    number varchar(24) not null,
    primary key (quote, number)
);
