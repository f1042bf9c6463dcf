-- A run that is moved lies on another shaft than it was thought to: its sheet with that shaft, and
-- what comes of it. Both count as long as the move does.
create table run_move_sheet (
  move_id   integer primary key references run_move,
  document  text not null check (json_valid(document)),
  program   text not null,
  answer    text check (answer is null or json_valid(answer)),
  no_answer text,
  check ((answer is null) <> (no_answer is null))
) strict;

create trigger run_move_sheet_no_update before update on run_move_sheet begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger run_move_sheet_no_delete before delete on run_move_sheet begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

drop view run_now;
drop view run_move_now;

create view run_move_now as
  select m.id, m.run_id, m.from_blank_id, m.to_blank_id, m.why
  from run_move m
  where m.id = (
    select max(n.id) from run_move n join action na on na.id = n.action_id
    where n.run_id = m.run_id and na.undone_at is null);

-- closed runs alone, each under the blank that it belongs to; document: the sheet of its shaft, with
-- or without readings; evaluation_id: another one for each answer
create view run_now as
  select r.id, coalesce(m.to_blank_id, r.blank_id) as blank_id, r.started_at, r.started_ms,
         r.origin, r.calibration, c.ending, c.readings, c.refused, c.gaps, c.missing,
         case when s.move_id is null then e.answer else s.answer end as answer,
         case when s.move_id is null then e.no_answer else s.no_answer end as no_answer,
         coalesce(s.program, e.program) as program,
         coalesce(-s.move_id, e.id) as evaluation_id,
         coalesce(s.document, r.document) as document,
         coalesce(v.set_aside, 0) as set_aside, v.why as set_aside_why,
         m.from_blank_id as moved_from_blank_id, m.why as moved_why
  from run r
  join run_closing c on c.run_id = r.id
  join evaluation_now e on e.run_id = r.id
  left join run_verdict_now v on v.run_id = r.id
  left join run_move_now m on m.run_id = r.id
  left join run_move_sheet s on s.move_id = m.id;
