-- The register of gauges, gauges.csv. A catalogue that was loaded before has none: its readings are judged by what requests say.

create table gauges (
    name varchar(24) primary key,
    line integer not null,
    kind varchar(40) not null,
    resolution bigint not null,
    uncertainty bigint,
    repeatability bigint,
    calibrated_on date,
    due date
);
