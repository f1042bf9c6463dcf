create table shelf (id integer primary key) strict;
insert into blank_shelf values (1);
