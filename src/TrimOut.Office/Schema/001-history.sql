-- The office copy: for each house the changes that arrived, in the order in which they were committed. Rows are only ever added, and only by office.push.
do $$
begin
  if not exists (select from pg_catalog.pg_roles where rolname = 'office_device') then
    create role office_device nologin;
  end if;
  execute format('grant connect on database %I to office_device', current_database());
end $$;

create table office.devices (
  device text collate "C" primary key check (device ~ '^[a-z0-9][a-z0-9-]{0,39}$'),
  part text not null check (part in ('office', 'crew', 'reader')),
  enrolled_at timestamptz not null default now(),
  shut_out_at timestamptz
);
comment on table office.devices is 'Who may connect. The login is device- and the name; part is the most that it may do: office is for all houses.';

create table office.houses (
  house int generated always as identity primary key,
  begun text collate "C" not null unique,
  last int not null default 0,
  brought_by text not null,
  brought_at timestamptz not null default now()
);
comment on column office.houses.begun is 'The name of the change that began the house: the same in all its copies.';
comment on column office.houses.last is 'The arrival number of its latest change. Whoever adds changes holds this row until the end of the transaction.';

create table office.access (
  house int not null references office.houses,
  device text collate "C" not null references office.devices,
  part text not null check (part in ('office', 'crew', 'reader')),
  primary key (house, device)
);

create table office.pushes (
  push bigint generated always as identity primary key,
  house int not null references office.houses,
  token uuid not null default gen_random_uuid(),
  device text not null,
  at timestamptz not null default now()
);
comment on column office.pushes.token is 'Tells whoever fetched up to here whether this is still the same past: after a restored backup it is not.';

create table office.changes (
  house int not null references office.houses,
  arrival int not null,
  push bigint not null,
  id text collate "C" not null,
  line text collate "C" not null,
  primary key (house, arrival),
  unique (id, house)
);
comment on column office.changes.line is 'The change as one line of JSON, byte for byte as it was sent: docs/house-file.md.';

create table office.cursors (
  device text collate "C" not null references office.devices,
  house int not null references office.houses,
  arrival int not null,
  at timestamptz not null default now(),
  primary key (device, house)
);
comment on table office.cursors is 'How far each device said that it holds a house. For whoever looks; what is sent depends on nothing here.';

create function office.add_only() returns trigger language plpgsql set search_path = pg_catalog, pg_temp as $$
begin
  raise exception using errcode = 'TO005', message = 'history is only added to';
end $$;
create trigger add_only before update or delete or truncate on office.changes for each statement execute function office.add_only();
create trigger add_only before update or delete or truncate on office.pushes for each statement execute function office.add_only();

-- The device that is connected; null for one that is shut out, and for whoever is none.
create function office.me() returns text language sql stable security definer set search_path = pg_catalog, pg_temp as $$
  select d.device from office.devices d where 'device-' || d.device = session_user::text and d.shut_out_at is null
$$;

create function office.my_part() returns text language sql stable security definer set search_path = pg_catalog, pg_temp as $$
  select d.part from office.devices d where d.device = office.me()
$$;

-- What the device that is connected may do in a house: office, crew or reader; null where it may nothing.
create function office.part_in(in_house int) returns text language sql stable security definer set search_path = pg_catalog, pg_temp as $$
  select case when d.part = 'office' then 'office' when d.part = 'reader' and a.part is not null then 'reader' else a.part end
  from office.devices d left join office.access a on a.device = d.device and a.house = in_house
  where d.device = office.me()
$$;

create function office.my_houses() returns setof int language sql stable security definer set search_path = pg_catalog, pg_temp as $$
  select h.house from office.houses h where office.my_part() = 'office'
  union
  select a.house from office.access a where a.device = office.me()
$$;

-- What is wrong with a line, as TrimOut says it of a file; null where it is a change. Also the name of the change and its stamp.
create function office.read_line(in_line text, out id text, out stamp bigint, out why text)
language plpgsql stable set search_path = pg_catalog, pg_temp as $$
declare
  -- A text may have the sign 0 in it, which this database keeps in a line and can't take out of one.
  j json := replace(in_line, '\u0000', '\u0020')::json;
  at text;
begin
  if octet_length(in_line) > 16000000 then why := 'it has more than 16000000 bytes'; return; end if;
  if strpos(in_line, chr(10)) > 0 or strpos(in_line, chr(13)) > 0 then why := 'it is not one line'; return; end if;
  if json_typeof(j) <> 'object' then why := 'it is no object'; return; end if;
  if array(select k from json_object_keys(j) k order by k collate "C") <> array['at', 'by', 'edits', 'id', 'stamp', 'v', 'what'] then
    why := 'a change has v, id, stamp, at, by, what and edits, each once'; return;
  end if;
  if json_typeof(j -> 'v') <> 'number' or (j ->> 'v')::numeric <> 1 then why := 'it is of no form that this office knows'; return; end if;
  id := j ->> 'id';
  if json_typeof(j -> 'id') <> 'string' or id !~ '^[A-Za-z0-9-]+:[1-9][0-9]{0,14}$' then why := 'its id names no change'; return; end if;
  if json_typeof(j -> 'stamp') <> 'number' or (j ->> 'stamp')::numeric not between 1 and 999999999999999
    or (j ->> 'stamp')::numeric <> trunc((j ->> 'stamp')::numeric) then why := 'its stamp is out of range'; return; end if;
  stamp := (j ->> 'stamp')::numeric;
  at := j ->> 'at';
  if json_typeof(j -> 'at') <> 'string' or at !~
    '^[12][0-9]{3}-[0-9]{2}-[0-9]{2}T([01][0-9]|2[0-3]):[0-5][0-9]:[0-5][0-9](\.[0-9]{1,7})?(Z|[+-](0[0-9]|1[0-3]):[0-5][0-9]|[+-]14:00)$'
    or substr(at, 6, 2) not between '01' and '12' or substr(at, 9, 2) < '01'
    or substr(at, 9, 2)::int > extract(day from make_date(substr(at, 1, 4)::int, substr(at, 6, 2)::int, 1) + interval '1 month' - interval '1 day') then
    why := 'its time is no time'; return;
  end if;
  if json_typeof(j -> 'by') <> 'string' or json_typeof(j -> 'what') <> 'string' then why := 'its by or what is no text'; return; end if;
  if json_typeof(j -> 'edits') <> 'array' then why := 'its edits are no list'; return; end if;
  select office.why_no_edit(e) into why from json_array_elements(j -> 'edits') e where office.why_no_edit(e) is not null limit 1;
end $$;

create function office.why_no_edit(e json) returns text language plpgsql stable set search_path = pg_catalog, pg_temp as $$
declare
  keys text[];
begin
  if json_typeof(e) <> 'object' then return 'an edit is no object'; end if;
  keys := array(select k from json_object_keys(e) k order by k collate "C");
  if exists (select from unnest(keys) k where k in ('add', 'kind', 'under', 'put', 'field', 'value', 'over', 'undo') group by k having count(*) > 1) then
    return 'an edit has something twice';
  end if;
  -- What only a newer TrimOut knows is kept whole, as it came.
  if keys && array['add'] and json_typeof(e -> 'add') <> 'string' or keys && array['put'] and json_typeof(e -> 'put') <> 'string'
    or keys && array['undo'] and json_typeof(e -> 'undo') <> 'string'
    or not keys <@ array['add', 'field', 'kind', 'over', 'put', 'under', 'undo', 'value'] then
    return null;
  end if;
  if keys = array['field', 'put', 'value'] or keys = array['field', 'over', 'put', 'value'] then
    if json_typeof(e -> 'field') <> 'string' or json_typeof(e -> 'value') not in ('string', 'null') then return 'an edit puts no text'; end if;
    if json_typeof(e -> 'over') <> 'array' then return 'what an edit is over is no list'; end if;
    if json_typeof(e -> 'over') = 'array' and exists (select from json_array_elements(e -> 'over') o
      where json_typeof(o) <> 'string' or o #>> '{}' !~ '^[A-Za-z0-9-]+:[1-9][0-9]{0,14}$') then return 'what an edit is over names no changes'; end if;
    return null;
  end if;
  if keys = array['add', 'kind', 'under'] then
    return case when json_typeof(e -> 'kind') <> 'string' or json_typeof(e -> 'under') <> 'string' then 'an edit adds no text' end;
  end if;
  if keys = array['undo'] then
    return case when e ->> 'undo' !~ '^[A-Za-z0-9-]+:[1-9][0-9]{0,14}$' then 'an undo names no change' end;
  end if;
  return 'an edit adds, puts or undoes';
end $$;

-- The house that has one of these changes, among those that the device may see.
create function office.find(in_ids text[]) returns table (house int, last int)
language sql stable security definer set search_path = pg_catalog, pg_temp as $$
  select h.house, h.last from office.houses h
  where h.house in (select c.house from office.changes c where c.id = any (in_ids) union select b.house from office.houses b where b.begun = any (in_ids))
    and h.house in (select office.my_houses())
  order by h.house limit 1
$$;

-- Begins a house at the office, or says which one it is; a crew that brings a house is let into it.
create function office.begin_house(in_begun text) returns int language plpgsql security definer set search_path = pg_catalog, pg_temp as $$
declare
  me text := office.me();
  found int;
begin
  if me is null then raise exception using errcode = 'TO003', message = 'shut out'; end if;
  select h.house into found from office.houses h where h.begun = in_begun;
  if found is null then
    if office.my_part() = 'reader' then raise exception using errcode = 'TO004', message = 'a reader brings no house'; end if;
    if in_begun !~ '^[A-Za-z0-9-]+:[1-9][0-9]{0,14}$' then raise exception using errcode = 'TO001', message = in_begun; end if;
    insert into office.houses (begun, brought_by) values (in_begun, me) on conflict (begun) do nothing returning house into found;
    if found is null then raise exception using errcode = '40001', message = 'begun by another at this moment'; end if;
    insert into office.access (house, device, part) values (found, me, office.my_part());
  end if;
  if office.part_in(found) is null then raise exception using errcode = 'TO004', message = 'not let in'; end if;
  return found;
end $$;

-- Adds changes to a house: all of these or none. One that is there already is passed over; another one under its name is refused.
create function office.push(in_house int, in_lines text[], out before int, out last int, out token uuid, out fresh int)
language plpgsql security definer set search_path = pg_catalog, pg_temp as $$
declare
  me text := office.me();
  ids text[];
  stamps bigint[];
  bad text;
  begun text;
  this_push bigint;
begin
  if me is null then raise exception using errcode = 'TO003', message = 'shut out'; end if;
  if coalesce(office.part_in(in_house), 'reader') = 'reader' then raise exception using errcode = 'TO004', message = 'may not add to this house'; end if;
  -- Reading takes longest, so it is done before the house is held.
  select array_agg(r.id order by g.ord), array_agg(r.stamp order by g.ord), (array_agg(coalesce(r.id, 'line ' || g.ord) || ': ' || r.why order by g.ord)
    filter (where r.why is not null))[1]
  into ids, stamps, bad from unnest(in_lines) with ordinality g (line, ord), office.read_line(g.line) r;
  if bad is not null then raise exception using errcode = 'TO001', message = bad; end if;

  -- Held until the end: so the order of arrival is that in which it is committed, and whoever fetches up to a number never misses one below it.
  select h.last, h.begun into before, begun from office.houses h where h.house = in_house for update;
  select g.id into bad from unnest(ids, stamps) g (id, stamp) where g.stamp = 1 and g.id <> begun limit 1;
  if bad is not null then raise exception using errcode = 'TO001', message = bad || ': it begins another house than ' || begun; end if;
  select g.id into bad from unnest(ids, in_lines) g (id, line) group by g.id having count(distinct g.line) > 1 limit 1;
  if bad is null then
    select g.id into bad from unnest(ids, in_lines) g (id, line) join office.changes c on c.id = g.id and c.house = in_house where c.line <> g.line limit 1;
  end if;
  if bad is not null then raise exception using errcode = 'TO002', message = bad; end if;

  fresh := 0;
  if exists (select from unnest(ids) i where not exists (select from office.changes c where c.id = i and c.house = in_house)) then
    insert into office.pushes (house, device) values (in_house, me) returning pushes.push, pushes.token into this_push, token;
    insert into office.changes (house, arrival, push, id, line)
    select in_house, before + row_number() over (order by n.ord), this_push, n.id, n.line from (
      select min(g.ord) as ord, g.id, min(g.line) as line from unnest(ids, in_lines) with ordinality g (id, line, ord)
      where not exists (select from office.changes c where c.id = g.id and c.house = in_house) group by g.id) n;
    get diagnostics fresh = row_count;
    update office.houses h set last = before + fresh where h.house = in_house;
  end if;
  last := before + fresh;
  if token is null then
    select p.token into token from office.changes c join office.pushes p on p.push = c.push where c.house = in_house and c.arrival = push.last;
  end if;
end $$;

-- The changes that arrived after a number, so many at the most. Whoever has some already says the token of the last one: another past is refused.
create function office.fetch(in_house int, in_after int, in_token uuid, in_most int) returns table (arrival int, token uuid, line text)
language plpgsql security definer set search_path = pg_catalog, pg_temp as $$
declare
  me text := office.me();
begin
  if me is null then raise exception using errcode = 'TO003', message = 'shut out'; end if;
  if office.part_in(in_house) is null then raise exception using errcode = 'TO004', message = 'not let in'; end if;
  if in_after > 0 then
    if not exists (select from office.changes c join office.pushes p on p.push = c.push
      where c.house = in_house and c.arrival = in_after and p.token = in_token) then
      raise exception using errcode = 'TO006', message = 'another past';
    end if;
    insert into office.cursors as known (device, house, arrival) values (me, in_house, in_after)
    on conflict (device, house) do update set arrival = excluded.arrival, at = now() where known.arrival < excluded.arrival;
  end if;
  return query select c.arrival, p.token, c.line from office.changes c join office.pushes p on p.push = c.push
    where c.house = in_house and c.arrival > in_after order by c.arrival limit least(in_most, 10000);
end $$;

-- The houses of the device that is connected, and how far they are.
create function office.mine() returns table (house int, begun text, last int, part text)
language sql stable security definer set search_path = pg_catalog, pg_temp as $$
  select h.house, h.begun, h.last, office.part_in(h.house) from office.houses h where h.house in (select office.my_houses()) order by h.house
$$;

-- Lets a device into a house, or, without a part, out of it.
create function office.let_in(in_house int, in_device text, in_part text) returns void
language plpgsql security definer set search_path = pg_catalog, pg_temp as $$
begin
  if office.me() is null then raise exception using errcode = 'TO003', message = 'shut out'; end if;
  if coalesce(office.part_in(in_house), '') <> 'office' then raise exception using errcode = 'TO004', message = 'only the office lets in'; end if;
  if not exists (select from office.devices d where d.device = in_device) then raise exception using errcode = 'TO007', message = in_device; end if;
  if in_part is null then
    delete from office.access a where a.house = in_house and a.device = in_device;
  else
    insert into office.access (house, device, part) values (in_house, in_device, in_part)
    on conflict (house, device) do update set part = excluded.part;
  end if;
end $$;

alter table office.houses enable row level security;
alter table office.changes enable row level security;
alter table office.pushes enable row level security;
alter table office.devices enable row level security;
alter table office.access enable row level security;
alter table office.cursors enable row level security;
create policy mine on office.houses for select to office_device using (house in (select office.my_houses()));
create policy mine on office.changes for select to office_device using (house in (select office.my_houses()));
create policy mine on office.pushes for select to office_device using (house in (select office.my_houses()));
create policy mine on office.devices for select to office_device using (device = office.me() or office.my_part() = 'office');
create policy mine on office.access for select to office_device using (device = office.me() or office.my_part() = 'office');
create policy mine on office.cursors for select to office_device using (device = office.me() or office.my_part() = 'office');

revoke all on all functions in schema office from public;
revoke all on all tables in schema office from public;
grant usage on schema office to office_device;
grant select on all tables in schema office to office_device;
grant execute on function office.me, office.my_part, office.my_houses, office.part_in, office.find, office.begin_house, office.push, office.fetch, office.mine,
  office.let_in to office_device;
