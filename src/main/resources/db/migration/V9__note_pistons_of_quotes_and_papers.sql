-- Which pistons a quote sells, and which were paired with or built into which hole: what confirm and finish are held against.
-- Of quotes and papers kept before it is not known.

alter table quotes add column design varchar(24);

create table quote_pistons (
    quote bigint not null references quotes (id),
    number varchar(24) not null,
    primary key (quote, number)
);

alter table order_papers add column design varchar(24);
alter table order_papers add column size varchar(200);

create table fitted_pistons (
    paper bigint not null references order_papers (id),
    cylinder varchar(200) not null,
    tag varchar(8),
    number varchar(24) not null,
    primary key (paper, cylinder)
);
