-- What a hone takes beyond the largest reading; where the engine says nothing common practice holds, as it did before.
alter table engines add column hone_clean_up bigint;
