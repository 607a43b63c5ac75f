-- Lists for a spreadsheet or a reporting program. What they say is worked out by TrimOut from the history, and kept with how far the history was then.
create table office.summaries (
  house int primary key references office.houses,
  arrival int not null,
  program text not null,
  device text not null,
  at timestamptz not null default now(),
  lists jsonb not null
);
alter table office.summaries enable row level security;
create policy mine on office.summaries for select to office_device using (house in (select office.my_houses()));

-- Keeps the lists of a house. Those of an earlier past are passed over, and so are lists that are older than what is kept.
create function office.keep_lists(in_house int, in_arrival int, in_program text, in_lists jsonb) returns boolean
language plpgsql security definer set search_path = pg_catalog, pg_temp as $$
declare
  me text := office.me();
begin
  if me is null then raise exception using errcode = 'TO003', message = 'shut out'; end if;
  if coalesce(office.part_in(in_house), 'reader') = 'reader' then raise exception using errcode = 'TO004', message = 'may not add to this house'; end if;
  perform from office.houses h where h.house = in_house and h.last = in_arrival for update;
  if not found then return false; end if;
  insert into office.summaries as kept (house, arrival, program, device, lists) values (in_house, in_arrival, in_program, me, in_lists)
  on conflict (house) do update set arrival = excluded.arrival, program = excluded.program, device = excluded.device, at = now(), lists = excluded.lists;
  return true;
end $$;

-- The houses whose lists are behind their history, among those that the device may add to.
create function office.behind() returns table (house int) language sql stable security definer set search_path = pg_catalog, pg_temp as $$
  select h.house from office.houses h left join office.summaries s on s.house = h.house
  where h.house in (select office.my_houses()) and office.part_in(h.house) <> 'reader' and h.last > coalesce(s.arrival, 0) order by h.house
$$;

create schema report;
comment on schema report is 'What TrimOut says of the houses that whoever asks may see: for spreadsheets and reporting programs. Only to be read.';

create view report.houses with (security_invoker = true) as
select h.house, x.*, h.last as changes, h.last - coalesce(s.arrival, 0) as changes_behind, s.at as listed_at
from office.houses h left join office.summaries s on s.house = h.house
left join lateral jsonb_to_record(s.lists -> 'house') as x (name text, client text, address text, crew text, units int, phase text, steps_done int, steps int,
  open_stops int, open_cautions int, drywall_on date, handover_on date) on true;
comment on view report.houses is 'Each house; changes_behind is how many changes arrived since its lists were worked out.';

create view report.units with (security_invoker = true) as
select h.house, s.lists #>> '{house,name}' as house_name, x.* from office.houses h join office.summaries s on s.house = h.house,
lateral jsonb_to_recordset(s.lists -> 'units') as x (tag text, room text, floor text, kind text, lead_side text, power text, phase text, next_step text,
  order_width_mm numeric, order_height_mm numeric, ordered_on date, expected_on date, arrived text, serial text, hub text);
comment on view report.units is 'Each unit; phase is the first one in which something is left to do, empty where nothing is.';

create view report.phases with (security_invoker = true) as
select h.house, s.lists #>> '{house,name}' as house_name, x.* from office.houses h join office.summaries s on s.house = h.house,
lateral jsonb_to_recordset(s.lists -> 'phases') as x (number int, phase text, steps_done int, steps int, open_stops int);
comment on view report.phases is 'Each phase of each house, in its order.';

create view report.open_items with (security_invoker = true) as
select h.house, s.lists #>> '{house,name}' as house_name, x.* from office.houses h join office.summaries s on s.house = h.house,
lateral jsonb_to_recordset(s.lists -> 'open_items') as x (sort text, about text, phase text, says text, to_clear text, check_id text);
comment on view report.open_items is 'What is open: findings of checks (sort is stop, caution or note) and items that somebody wrote (sort is written).';

create view report.tests with (security_invoker = true) as
select h.house, s.lists #>> '{house,name}' as house_name, x.* from office.houses h join office.summaries s on s.house = h.house,
lateral jsonb_to_recordset(s.lists -> 'tests') as x (unit text, first_loop_ohm numeric, first_apart_ohm numeric, first_to_frame_ohm numeric,
  second_loop_ohm numeric, second_apart_ohm numeric, second_to_frame_ohm numeric, open_volt numeric, loaded_volt numeric, polarity text, panel text, output int);
comment on view report.tests is 'The readings of each home run; empty where none was taken.';

create view report.parts with (security_invoker = true) as
select h.house, s.lists #>> '{house,name}' as house_name, x.* from office.houses h join office.summaries s on s.house = h.house,
lateral jsonb_to_recordset(s.lists -> 'parts') as x (part_group text, part text, count numeric, at_least boolean, unit text, counted_from text);
comment on view report.parts is 'What each house takes; count is empty where it can''t be counted yet.';

revoke all on all functions in schema office from public;
revoke all on table office.summaries from public;
grant select on table office.summaries to office_device;
grant usage on schema report to office_device;
grant select on all tables in schema report to office_device;
grant execute on function office.keep_lists, office.behind to office_device;
