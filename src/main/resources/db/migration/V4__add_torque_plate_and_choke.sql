alter table engines add column torque_plate boolean not null default false;
alter table engines add column choke_least bigint;
alter table engines add column choke_greatest bigint;
