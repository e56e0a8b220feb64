-- A tag is compared without regard to case. Where two blocks were told apart by case alone the first keeps the tag for both, and the other is
-- found by its own writing only, as it was before.

alter table blocks add column folded varchar(40);

update blocks set folded = lower(tag)
where not exists (select 1 from blocks other where lower(other.tag) = lower(blocks.tag) and other.tag < blocks.tag);

create unique index blocks_by_folded_tag on blocks (folded);
