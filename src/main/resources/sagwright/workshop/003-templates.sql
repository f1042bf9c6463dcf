-- Tapers that the shop keeps to be used again. A template never changes: it bears its newest name,
-- and one whose newest name is null is deleted.

-- document: {"lengthMm", "taper": [{"xMm", "diameterMm"}…]}, as in an order's finish
create table taper_template (
  id        integer primary key,
  action_id integer not null references action,
  document  text    not null check (json_valid(document))
) strict;

create table taper_template_name (
  id          integer primary key,
  action_id   integer not null references action,
  template_id integer not null references taper_template,
  name        text
) strict;
create index taper_template_name_by_template on taper_template_name (template_id);

create view taper_template_now as
  select t.id, n.name, t.document
  from taper_template t
  join taper_template_name n on n.id = (
    select max(m.id) from taper_template_name m join action am on am.id = m.action_id
    where m.template_id = t.id and am.undone_at is null)
  where n.name is not null;

create trigger taper_template_no_update before update on taper_template begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger taper_template_no_delete before delete on taper_template begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger taper_template_name_no_update before update on taper_template_name begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;

create trigger taper_template_name_no_delete before delete on taper_template_name begin
  select raise(abort, 'a record is never changed: a newer one follows it');
end;
