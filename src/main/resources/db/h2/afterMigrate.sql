-- After each start on H2, which writes down how far it has numbered rows a moment after others may have kept rows with these numbers: where the
-- power goes in between, it would give them again, and each would be refused as a key that came twice. So numbers go on after the last one
-- that a row has. PostgreSQL has it in order of itself.

alter table revisions alter column id restart with (select coalesce(max(id), 0) + 1 from revisions);
alter table cylinders alter column id restart with (select coalesce(max(id), 0) + 1 from cylinders);
alter table sizes alter column id restart with (select coalesce(max(id), 0) + 1 from sizes);
alter table grooves alter column id restart with (select coalesce(max(id), 0) + 1 from grooves);
alter table rings alter column id restart with (select coalesce(max(id), 0) + 1 from rings);
alter table fasteners alter column id restart with (select coalesce(max(id), 0) + 1 from fasteners);
alter table torque_stages alter column id restart with (select coalesce(max(id), 0) + 1 from torque_stages);
alter table boxes alter column id restart with (select coalesce(max(id), 0) + 1 from boxes);
alter table orders alter column number restart with (select coalesce(max(number), 0) + 1 from orders);
alter table order_papers alter column id restart with (select coalesce(max(id), 0) + 1 from order_papers);
alter table quotes alter column id restart with (select coalesce(max(id), 0) + 1 from quotes);
alter table quote_parts alter column id restart with (select coalesce(max(id), 0) + 1 from quote_parts);
alter table reservations alter column id restart with (select coalesce(max(id), 0) + 1 from reservations);
alter table hole_lives alter column id restart with (select coalesce(max(id), 0) + 1 from hole_lives);

-- A hook that is taken away leaves its number to no other: whoever made it may still ask for it.
alter table hooks alter column id restart with (
    select greatest(
        coalesce((select max(id) from hooks), 0) + 1,
        (select identity_base from information_schema.columns where table_name = 'HOOKS' and column_name = 'ID')));
