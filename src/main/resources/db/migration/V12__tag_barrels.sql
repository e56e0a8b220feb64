-- The tags of the barrels of an order by the holes they sit at, and of the barrel in the life of a hole: barrels are swapped between blocks, and
-- what was signed goes with them. A barrel bears its tag as a block does, and whatever was tagged so far is a block.

alter table blocks add column kind varchar(10) default 'BLOCK' not null;

create table order_barrels (
    order_number bigint not null references orders (number),
    cylinder varchar(200) not null,
    tag varchar(40) not null,
    primary key (order_number, cylinder)
);

alter table hole_lives add column barrel varchar(40);
create index hole_lives_by_barrel on hole_lives (barrel, id);
