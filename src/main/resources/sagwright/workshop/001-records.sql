-- The records of a workshop. What was measured or said is never changed and never deleted: newer
-- rows follow. One thing alone is marked: an action that was undone, and with it all its rows.

-- Long texts stand last in their tables: what stands behind them is slow to reach.

create table action (
  id        integer primary key,
  at        text    not null,
  what      text    not null,
  initials  text,
  undoable  integer not null check (undoable in (0, 1)),
  undone_at text
) strict;

create table setting (
  name  text primary key,
  value text not null
) strict;

-- folded: the tag as it must be unique, without regard to case
create table blank (
  id        integer primary key,
  action_id integer not null references action,
  tag       text    not null,
  folded    text    not null,
  withdrawn integer not null default 0 check (withdrawn in (0, 1))
) strict;
create unique index blank_by_tag on blank (folded) where withdrawn = 0;

-- document: a sheet that holds the shaft alone
create table caliper_entry (
  id        integer primary key,
  action_id integer not null references action,
  blank_id  integer not null references blank,
  document  text    not null check (json_valid(document)),
  why       text    not null
) strict;
create index caliper_entry_by_blank on caliper_entry (blank_id);

create table stage_entry (
  id        integer primary key,
  action_id integer not null references action,
  blank_id  integer not null references blank,
  stage     text    not null
) strict;
create index stage_entry_by_blank on stage_entry (blank_id);

-- a blank that is no more: sold, broken, firewood
create table blank_end (
  id        integer primary key,
  action_id integer not null references action,
  blank_id  integer not null references blank,
  why       text    not null
) strict;
create index blank_end_by_blank on blank_end (blank_id);

create table cue_order (
  id        integer primary key,
  action_id integer not null references action,
  number    text    not null,
  folded    text    not null,
  withdrawn integer not null default 0 check (withdrawn in (0, 1))
) strict;
create unique index cue_order_by_number on cue_order (folded) where withdrawn = 0;

create table order_version (
  id        integer primary key,
  action_id integer not null references action,
  order_id  integer not null references cue_order,
  document  text    not null check (json_valid(document))
) strict;
create index order_version_by_order on order_version (order_id);

-- an order that is delivered or called off
create table order_end (
  id        integer primary key,
  action_id integer not null references action,
  order_id  integer not null references cue_order,
  why       text    not null
) strict;
create index order_end_by_order on order_end (order_id);

-- A run is entered when it starts, before its first reading, and closed by a row of run_closing: a
-- run without one was cut off, or goes on.
-- document: the sheet without its readings; calibration: the one in force, null where none was;
-- target_n, safe_n: how far the test was to load
create table run (
  id          integer primary key,
  action_id   integer not null references action,
  blank_id    integer not null references blank,
  started_at  text    not null,
  started_ms  integer not null,
  origin      text    not null check (origin in ('bench', 'typed', 'imported')),
  order_id    integer references cue_order,
  target_n    real    check (target_n > 0 and target_n < 1e300),
  safe_n      real    check (safe_n >= target_n and safe_n < 1e300),
  calibration text    check (calibration is null or json_valid(calibration)),
  document    text    not null check (json_valid(document))
) strict;
create index run_by_blank on run (blank_id);

-- document: the whole sheet; wire: every byte that came over the line, in gzip's format
create table run_closing (
  run_id    integer primary key references run,
  action_id integer not null references action,
  ending    text    not null,
  readings  integer not null check (readings >= 0),
  refused   integer not null check (refused >= 0),
  gaps      integer not null check (gaps >= 0),
  missing   integer not null check (missing >= 0),
  document  text    not null check (json_valid(document)),
  wire      blob
) strict;

-- the newest counts; either an answer or why there is none
create table evaluation (
  id        integer primary key,
  run_id    integer not null references run,
  at        text    not null,
  program   text    not null,
  answer    text    check (answer is null or json_valid(answer)),
  no_answer text,
  check ((answer is null) <> (no_answer is null))
) strict;
create index evaluation_by_run on evaluation (run_id);

-- the newest counts; a run that has none is kept
create table run_verdict (
  id        integer primary key,
  action_id integer not null references action,
  run_id    integer not null references run,
  set_aside integer not null check (set_aside in (0, 1)),
  why       text    not null
) strict;
create index run_verdict_by_run on run_verdict (run_id);

-- a run that lay under the wrong blank; the newest counts
create table run_move (
  id            integer primary key,
  action_id     integer not null references action,
  run_id        integer not null references run,
  from_blank_id integer not null references blank,
  to_blank_id   integer not null references blank,
  why           text    not null
) strict;
create index run_move_by_run on run_move (run_id);
create index run_move_by_blank on run_move (to_blank_id);

-- With caliper entry, order version and runs, which never change, everything to work it out again.
create table grade (
  id               integer primary key,
  action_id        integer not null references action,
  blank_id         integer not null references blank,
  order_version_id integer not null references order_version,
  caliper_entry_id integer not null references caliper_entry,
  sureness         real    not null check (sureness > 0 and sureness < 1),
  program          text    not null,
  answer           text    not null check (json_valid(answer))
) strict;
create index grade_by_blank on grade (blank_id);

create table grade_run (
  grade_id integer not null references grade,
  run_id   integer not null references run,
  primary key (grade_id, run_id)
) strict, without rowid;

create table promise (
  id        integer primary key,
  action_id integer not null references action,
  blank_id  integer not null references blank,
  order_id  integer not null references cue_order
) strict;
create index promise_by_blank on promise (blank_id);
create index promise_by_order on promise (order_id);

create table promise_release (
  id         integer primary key,
  action_id  integer not null references action,
  promise_id integer not null references promise
) strict;
create index promise_release_by_promise on promise_release (promise_id);

create table note (
  id        integer primary key,
  action_id integer not null references action,
  blank_id  integer references blank,
  order_id  integer references cue_order,
  words     text    not null,
  check ((blank_id is null) <> (order_id is null))
) strict;

-- what the hand felt before the bench was asked
create table guess (
  id               integer primary key,
  action_id        integer not null references action,
  run_id           integer not null references run,
  stiffness_n_mm   real    not null check (stiffness_n_mm > 0 and stiffness_n_mm < 1e300)
) strict;
create index guess_by_run on guess (run_id);

create table calibration (
  id        integer primary key,
  action_id integer not null references action,
  document  text    not null check (json_valid(document))
) strict;

-- a run on the rod of known size; document: its sheet
create table check_reading (
  id        integer primary key,
  action_id integer not null references action,
  rod       text    not null,
  document  text    not null check (json_valid(document)),
  answer    text    not null check (json_valid(answer))
) strict;

-- As things stand: newest rows of actions that were not undone.

create view blank_now as
  select b.id, b.tag, b.folded
  from blank b where b.withdrawn = 0;

create view caliper_now as
  select e.id, e.blank_id, e.document, e.why, a.at
  from caliper_entry e join action a on a.id = e.action_id
  where e.id = (
    select max(n.id) from caliper_entry n join action na on na.id = n.action_id
    where n.blank_id = e.blank_id and na.undone_at is null);

create view stage_now as
  select e.blank_id, e.stage
  from stage_entry e
  where e.id = (
    select max(n.id) from stage_entry n join action na on na.id = n.action_id
    where n.blank_id = e.blank_id and na.undone_at is null);

create view blank_end_now as
  select e.blank_id, e.why, a.at
  from blank_end e join action a on a.id = e.action_id and a.undone_at is null;

create view order_now as
  select o.id, o.number, o.folded, v.id as version_id, v.document
  from cue_order o join order_version v on v.order_id = o.id
  where o.withdrawn = 0 and v.id = (
    select max(n.id) from order_version n join action na on na.id = n.action_id
    where n.order_id = o.id and na.undone_at is null);

create view order_end_now as
  select e.order_id, e.why, a.at
  from order_end e join action a on a.id = e.action_id and a.undone_at is null;

create view promise_now as
  select p.id, p.blank_id, p.order_id, a.at
  from promise p join action a on a.id = p.action_id and a.undone_at is null
  where not exists (
    select 1 from promise_release r join action ra on ra.id = r.action_id
    where r.promise_id = p.id and ra.undone_at is null);

create view evaluation_now as
  select e.* from evaluation e
  where e.id = (select max(n.id) from evaluation n where n.run_id = e.run_id);

create view run_verdict_now as
  select v.run_id, v.set_aside, v.why
  from run_verdict v
  where v.id = (
    select max(n.id) from run_verdict n join action na on na.id = n.action_id
    where n.run_id = v.run_id and na.undone_at is null);

create view run_move_now as
  select m.run_id, m.from_blank_id, m.to_blank_id, m.why
  from run_move m
  where m.id = (
    select max(n.id) from run_move n join action na on na.id = n.action_id
    where n.run_id = m.run_id and na.undone_at is null);

-- closed runs alone, each under the blank that it belongs to
create view run_now as
  select r.id, coalesce(m.to_blank_id, r.blank_id) as blank_id, r.started_at, r.started_ms,
         r.origin, r.calibration, c.ending, c.readings, c.refused, c.gaps, c.missing,
         e.answer, e.no_answer, e.program,
         coalesce(v.set_aside, 0) as set_aside, v.why as set_aside_why,
         m.from_blank_id as moved_from_blank_id, m.why as moved_why
  from run r
  join run_closing c on c.run_id = r.id
  join evaluation_now e on e.run_id = r.id
  left join run_verdict_now v on v.run_id = r.id
  left join run_move_now m on m.run_id = r.id;

create view grade_now as
  select g.*, a.at, a.initials
  from grade g join action a on a.id = g.action_id and a.undone_at is null;

-- What was written stays as it was written.

create trigger caliper_entry_no_update before update on caliper_entry begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger caliper_entry_no_delete before delete on caliper_entry begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger stage_entry_no_update before update on stage_entry begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger stage_entry_no_delete before delete on stage_entry begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger blank_end_no_update before update on blank_end begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger blank_end_no_delete before delete on blank_end begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger order_version_no_update before update on order_version begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger order_version_no_delete before delete on order_version begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger order_end_no_update before update on order_end begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger order_end_no_delete before delete on order_end begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger run_no_update before update on run begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger run_no_delete before delete on run begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger run_closing_no_update before update on run_closing begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger run_closing_no_delete before delete on run_closing begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger evaluation_no_update before update on evaluation begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger evaluation_no_delete before delete on evaluation begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger run_verdict_no_update before update on run_verdict begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger run_verdict_no_delete before delete on run_verdict begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger run_move_no_update before update on run_move begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger run_move_no_delete before delete on run_move begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger grade_no_update before update on grade begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger grade_no_delete before delete on grade begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger grade_run_no_update before update on grade_run begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger grade_run_no_delete before delete on grade_run begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger promise_no_update before update on promise begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger promise_no_delete before delete on promise begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger promise_release_no_update before update on promise_release begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger promise_release_no_delete before delete on promise_release begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger note_no_update before update on note begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger note_no_delete before delete on note begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger guess_no_update before update on guess begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger guess_no_delete before delete on guess begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger calibration_no_update before update on calibration begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger calibration_no_delete before delete on calibration begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger check_reading_no_update before update on check_reading begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger check_reading_no_delete before delete on check_reading begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger blank_no_update before update of id, action_id, tag, folded on blank begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger blank_no_delete before delete on blank begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger cue_order_no_update before update of id, action_id, number, folded on cue_order begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger cue_order_no_delete before delete on cue_order begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger action_no_update before update of id, at, what, initials, undoable on action begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger action_no_delete before delete on action begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;
