-- What is needed of thousands of blanks at once. Copies alone: each is made from rows that never
-- change, so that it never grows stale; where one is missing, the rows themselves are read.

-- outline: stations and mass of a caliper entry's document, packed
create table caliper_figures (
  caliper_entry_id integer primary key references caliper_entry,
  outline          blob    not null
) strict;

-- what several runs of a blank have shown together; basis: the evaluations that it rests on
create table surveyed_wood (
  id       integer primary key,
  blank_id integer not null references blank,
  basis    text    not null,
  document text    not null check (json_valid(document))
) strict;
create index surveyed_wood_by_blank on surveyed_wood (blank_id);
