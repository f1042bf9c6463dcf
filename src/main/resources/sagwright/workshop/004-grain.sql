-- How the grain of a blank looked to whoever looked at it; the newest counts.
-- lines_per_cm: growth rings a centimetre; run_out: straight, slight or runs out
create table grain_entry (
  id           integer primary key,
  action_id    integer not null references action,
  blank_id     integer not null references blank,
  lines_per_cm real check (lines_per_cm > 0 and lines_per_cm < 1e300),
  run_out      text check (run_out in ('STRAIGHT', 'SLIGHT', 'RUNS_OUT')),
  looks        text
) strict;
create index grain_entry_by_blank on grain_entry (blank_id);

create trigger grain_entry_no_update before update on grain_entry begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger grain_entry_no_delete before delete on grain_entry begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;
