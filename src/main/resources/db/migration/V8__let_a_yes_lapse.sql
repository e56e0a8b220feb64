-- The day by which parts to come were to be here. Days of what is awaited already are not known.
alter table reservations add column expected_on date;

-- Only an order with the customer's yes waits for parts.
update reservations set to_come = 0
where order_number in (select number from orders where state <> 'ACCEPTED');
delete from reservations where put_aside = 0 and to_come = 0;

-- The accepted quote is one to which the yes stands.
update orders set accepted_quote = null
where state not in ('ACCEPTED', 'CONFIRMED', 'FINISHED', 'RELEASED');

-- Nothing runs out while parts are to come, or once the pistons were confirmed: the paper of the bench tells.
update orders set held_until = null
where state = 'ACCEPTED'
  and (number in (select order_number from reservations where to_come > 0)
    or number in (select order_number from order_papers where kind = 'BENCH'));

-- What did not clean up after it was confirmed was held without end: it has the usual fourteen days from now.
update orders set held_until = current_timestamp + interval '14' day
where held_until is null and state in ('SURVEYED', 'QUOTED')
  and number in (select order_number from reservations);
