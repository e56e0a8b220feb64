-- The quote that a customer had said yes to before holes did not clean up: the next one stands in its place. Of orders so far it is not known.

alter table orders add column quote_given_up integer;
