create table gaskets (
    gasket varchar(24) primary key,
    line integer not null,
    engine varchar(24) not null references engines (engine),
    place varchar(40) not null,
    serves_cylinders integer not null,
    opening_least bigint,
    opening_greatest bigint,
    thickness_least bigint not null,
    thickness_greatest bigint not null,
    margin bigint
);
