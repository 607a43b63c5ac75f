-- What a device may do in a house is no more than both say: what it was enrolled as, and what it was let in as.
create or replace function office.part_in(in_house int) returns text language sql stable security definer set search_path = pg_catalog, pg_temp as $$
  select case when d.part = 'office' then 'office' when d.part = 'reader' and a.part is not null then 'reader'
    when a.part = 'office' then 'crew' else a.part end
  from office.devices d left join office.access a on a.device = d.device and a.house = in_house
  where d.device = office.me()
$$;

-- Lets a device into a house that there is, or, without a part, out of it.
create or replace function office.let_in(in_house int, in_device text, in_part text) returns void
language plpgsql security definer set search_path = pg_catalog, pg_temp as $$
begin
  if office.me() is null then raise exception using errcode = 'TO003', message = 'shut out'; end if;
  if coalesce(office.part_in(in_house), '') <> 'office' then raise exception using errcode = 'TO004', message = 'only the office lets in'; end if;
  if not exists (select from office.houses h where h.house = in_house) then raise exception using errcode = 'TO008', message = in_house::text; end if;
  if not exists (select from office.devices d where d.device = in_device) then raise exception using errcode = 'TO007', message = in_device; end if;
  if in_part is null then
    delete from office.access a where a.house = in_house and a.device = in_device;
  else
    insert into office.access (house, device, part) values (in_house, in_device, in_part)
    on conflict (house, device) do update set part = excluded.part;
  end if;
end $$;

revoke all on function office.part_in, office.let_in from public;
grant execute on function office.part_in, office.let_in to office_device;
