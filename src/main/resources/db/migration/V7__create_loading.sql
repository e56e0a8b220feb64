-- One row, which a start holds while it fills an empty database: of several machines that start at once one reads its files, and the others wait.

create table loading (
    id integer primary key
);

insert into loading (id) values (1);
