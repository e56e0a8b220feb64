-- What the engine maker allows a freshly honed hole to be out of shape; where he is silent common practice holds, as it did before.
alter table engines add column finished_shape bigint;
