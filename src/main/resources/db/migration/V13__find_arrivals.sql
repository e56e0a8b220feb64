-- The last arrivals are shown on the page of the shelf: without this every line of the journal is read for them.

create index journal_by_deed on journal (did, position);
