using TrimOut.Core.History;

namespace TrimOut.Office.Tests.Who;

/// <summary>What a crew may try whose house it is not: each statement must tell it nothing of the other's house, and leave everything as it was.</summary>
public class AttackTests(OfficeServer server) : IClassFixture<OfficeServer>
{
    private const string Secret = "Alarm code 4711 of the other house";

    [OfficeFact]
    public async Task NoStatementReadsOrWritesTheHouseOfAnotherCrew()
    {
        var (owning, other, own) = (await server.Enroll("owning-van"), await server.Enroll("other-van"), Houses.Begin("Own house"));
        var theirs = Houses.Begin("Their house");
        theirs.Note(Secret);
        var house = (await owning.Exchange(theirs, null)).House;
        var mine = (await other.Exchange(own, null)).House;
        await using var source = OfficeConnection.Source(server.Owner);
        await using var owner = await source.OpenConnectionAsync();
        var before = await Sql.All(owner);
        Assert.Contains(Secret, before);

        var line = ChangeJson.Write(theirs.Log.Changes[^1]).Replace("'", "''", StringComparison.Ordinal);
        foreach (var statement in Statements(house, mine, theirs.Log.Changes[0].Id.ToString(), line.Replace(":2\"", ":3\"", StringComparison.Ordinal)))
        {
            var said = await Sql.Try(other, statement);
            Assert.False(said.Contains(Secret, StringComparison.Ordinal), $"{statement}\ntold: {said}");
            Assert.False(said.Contains("owning-van", StringComparison.Ordinal) && !statement.Contains("owning-van", StringComparison.Ordinal),
                $"{statement}\ntold: {said}");
            var after = await Sql.All(owner);
            Assert.True(before == after, $"{statement}\nchanged the office: {said}");
        }
    }

    [OfficeFact]
    public async Task TheSameStatementsAreNoticedWhereNothingKeepsThemOff()
    {
        var house = Houses.Begin("House of the crew itself");
        house.Note(Secret);
        var van = await server.Enroll("van-itself");
        var number = (await van.Exchange(house, null)).House;
        var said = new List<string>();
        // A server takes a hundred connections.
        foreach (var some in Statements(number, number, house.Log.Changes[0].Id.ToString(), "{}").Chunk(10))
            said.AddRange(await Task.WhenAll(some.Select(s => Sql.Try(van, s))));
        Assert.True(said.Count(s => s.Contains(Secret, StringComparison.Ordinal)) >= 8, "the statements would read a house that is one's own");
    }

    [OfficeFact]
    public async Task AReaderFetchesAndNeverSends()
    {
        var (desk, van, client) = (await server.Enroll("desk-1", "office"), await server.Enroll("van-1"), await server.Enroll("client-1", "reader"));
        var house = Houses.Begin("Shown house");
        var number = (await van.Exchange(house, null)).House;
        await using (var office = await OfficeConnection.Open(desk, default))
            await office.LetIn(number, "client-1", "crew", default);
        var copy = Houses.Copy(house.Log);
        var mark = await client.Exchange(copy, null, sends: false);
        copy.Note("what a reader thinks");
        house.Note("what the crew did meanwhile");
        await van.Exchange(house, null);
        await using var reading = await OfficeConnection.Open(client, default);
        var done = await Exchange.Run(reading, copy.Log, mark, TimeProvider.System, sends: true, _ => { }, default);
        Assert.Equal((0, 1, 1), (done.Sent, done.NotSent, done.Merge!.New.Length));
        Assert.DoesNotContain("what a reader thinks", await Sql.Try(van, "select line from office.changes"));
    }

    [OfficeFact]
    public async Task ACrewThatWasLetInAsOfficeLetsNobodyIn()
    {
        var (desk, owner, van) = (await server.Enroll("desk-5", "office"), await server.Enroll("van-5"), await server.Enroll("van-6"));
        await server.Enroll("van-7");
        var number = (await owner.Exchange(Houses.Begin("House of the fifth van"), null)).House;
        await using (var office = await OfficeConnection.Open(desk, default))
            await office.LetIn(number, "van-6", "office", default);
        Assert.Contains("TO004", await Sql.Try(van, $"select office.let_in({number}, 'van-7', 'crew')"));
        Assert.Equal("crew", await Sql.Try(van, $"select office.part_in({number})"));
    }

    [OfficeFact]
    public async Task AHouseThatThereIsNotAndTheOwnersCommandsAreRefusedInWords()
    {
        var desk = await server.Enroll("desk-6", "office");
        await using var office = await OfficeConnection.Open(desk, default);
        var none = await Assert.ThrowsAsync<OfficeException>(() => office.LetIn(9999, "desk-6", "crew", default));
        Assert.Contains("no house 9999", none.Message, StringComparison.Ordinal);
        var owners = await Assert.ThrowsAsync<OfficeException>(() => Running.Devices.Enroll(desk, "van-8", "crew", default));
        Assert.Contains("Only the owner of the office's tables may do that", owners.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("shut out", owners.Message, StringComparison.Ordinal);
    }

    [OfficeFact]
    public async Task OnlyTheOfficeLetsIn()
    {
        var (desk, van, second) = (await server.Enroll("desk-2", "office"), await server.Enroll("van-2"), await server.Enroll("van-3"));
        var house = Houses.Begin("Shared house");
        var number = (await van.Exchange(house, null)).House;
        await using var crew = await OfficeConnection.Open(second, default);
        await Assert.ThrowsAsync<OfficeException>(() => crew.LetIn(number, "van-3", "crew", default));
        await Assert.ThrowsAsync<OfficeException>(() => Exchange.First(crew, number, TimeProvider.System, _ => { }, default));
        await using (var office = await OfficeConnection.Open(desk, default))
            await office.LetIn(number, "van-3", "crew", default);
        Assert.Equal(house.Log.Names(), (await Exchange.First(crew, number, TimeProvider.System, _ => { }, default)).Log.Names());
        await using (var office = await OfficeConnection.Open(desk, default))
            await office.LetIn(number, "van-3", null, default);
        await Assert.ThrowsAsync<OfficeException>(() => Exchange.First(crew, number, TimeProvider.System, _ => { }, default));
    }

    [OfficeFact]
    public async Task AShutOutDeviceIsOutAtOnceAlsoWhereItIsConnected()
    {
        var van = await server.Enroll("lost-van");
        var house = Houses.Begin("House of a lost laptop");
        var mark = await van.Exchange(house, null);
        await using var open = await OfficeConnection.Open(van, default);
        await Running.Devices.ShutOut(server.Owner, "lost-van", default);
        await Assert.ThrowsAsync<OfficeException>(() => open.Fetch(mark.House, 0, default, 10, default));
        Assert.Equal(OfficeFault.NotAllowed, (await Assert.ThrowsAsync<OfficeException>(() => OfficeConnection.Open(van, default))).Fault);
        // Somebody who found another login for it still is nobody.
        await Running.Devices.Do(server.Owner, "alter role \"device-lost-van\" login", default);
        Assert.DoesNotContain(house.House.Name, await Sql.Try(van, "select line from office.changes"));
        // Enrolled again it has a new secret; the old one is worth nothing.
        var again = await server.Enroll("lost-van");
        await again.Exchange(house, mark);
        await Assert.ThrowsAsync<OfficeException>(() => OfficeConnection.Open(van, default));
    }

    [OfficeFact]
    public async Task EvenTheOwnerOfTheTablesChangesNoHistoryByMistake()
    {
        var house = Houses.Begin("Kept house");
        await (await server.Enroll("van-4")).Exchange(house, null);
        var before = await Sql.All(server.Owner);
        foreach (var statement in (string[])["update office.changes set line = ''",
            "delete from office.changes", "truncate office.changes", "delete from office.pushes"])
            Assert.Contains("TO005", await Sql.Try(server.Owner, statement));
        Assert.Equal(before, await Sql.All(server.Owner));
    }

    /// <summary>The attacks: on a house, by somebody who has another one, with the name of the change that began it, and a line that might be one.</summary>
    private static IEnumerable<string> Statements(int house, int mine, string begun, string line) =>
    [
        "select * from office.changes", $"select line from office.changes where house = {house}", "table office.houses", "table office.pushes",
        "table office.access",
        "table office.devices", "table office.cursors", "table office.migrations", "select count(*) from office.changes where line like '%Alarm%'",
        $"select * from office.fetch({house}, 0, null, 100)", $"select * from office.fetch({house}, -1, null, 100)",
        $"select * from office.find(array['{begun}'])",
        "table office.summaries", "table report.houses", "table report.open_items", "table report.units", "select lists::text from office.summaries",
        "select * from report.houses h where h.name = 'Their house'", "select * from report.phases, pg_sleep(0)", "select * from office.behind()",
        $"select office.keep_lists({house}, 2, '1', '{{}}')", $"select office.keep_lists({house}, 1, '1', '{{}}')",
        "update office.summaries set lists = '{}'",
        "delete from report.houses", "update report.houses set name = 'x'", "create view report.more as select 1", "drop view report.houses",
        "alter view report.houses set (security_invoker = false)", "alter view report.houses reset (security_invoker)",
        "select * from office.mine()", $"select office.part_in({house})", "select * from office.my_houses()",
        "select string_agg(c::text, '') from office.changes c", "select row_to_json(c) from office.changes c",
        "select table_to_xml('office.changes', true, true, '')",
        "select query_to_xml('select * from office.changes', true, true, '')", "copy office.changes to stdout",
        "copy (select * from office.changes) to stdout",
        "select most_common_vals::text from pg_stats where schemaname = 'office'", "select * from pg_stats_ext",
        "select ctid, * from office.changes tablesample system (100)", "select line from only office.changes",
        "with c as materialized (select * from office.changes) select * from c", "select (select line from office.changes limit 1)",
        "select 1 from office.changes where line::int = 1", "select 1 / (case when line like '%Alarm%' then 0 else 1 end) from office.changes",
        "create function pg_temp.see(text) returns bool language plpgsql cost 0.0000001 as $$ begin raise notice '%', $1; return true; end $$",
        "do $$ declare r record; begin for r in select * from office.changes loop raise notice '%', r.line; end loop; end $$",
        "do $$ declare r record; begin for r in select * from office.devices loop raise notice '%', r.device; end loop; end $$",
        "prepare p as select line from office.changes; execute p", "declare c cursor for select line from office.changes; fetch all from c",
        "begin; declare c cursor with hold for select line from office.changes; fetch all from c; commit",
        "explain (analyze, verbose) select * from office.changes where line like '%Alarm%'",
        "set row_security = off; select line from office.changes", "set role office_owner; select line from office.changes", "set role postgres",
        "set session authorization office_owner", "set session authorization 'device-owning-van'", "set role 'device-owning-van'",
        "set role office_device; table office.changes",
        "reset role; table office.changes", "set session_replication_role = replica; delete from office.changes",
        "set local row_security = off; table office.changes",
        "alter table office.changes disable row level security", "alter table office.changes disable trigger all", "drop policy mine on office.changes",
        "create policy more on office.changes using (true)", "drop trigger add_only on office.changes", "alter table office.changes owner to current_user",
        "drop table office.changes", "drop schema office cascade", "grant select on office.changes to public", "grant office_owner to current_user",
        "alter role current_user superuser", "alter role current_user createrole", "alter role current_user bypassrls",
        "alter role \"device-owning-van\" password 'x'",
        "create role helper superuser", "create table office.mine_too (a int)", "create table public.a (a int)", "create temporary table changes (a int)",
        "create schema office_too", "create function public.now() returns timestamptz language sql as 'select null::timestamptz'",
        "create view public.v as select * from office.changes", "create extension dblink", "create extension file_fdw", "create language plpython3u",
        "select pg_read_file('postgresql.conf')", "select pg_ls_dir('.')", "select lo_import('/etc/passwd')", "copy (select 1) to program 'id'",
        "copy (table office.changes) to program 'cat'", "select pg_terminate_backend(pid) from pg_stat_activity",
        "select query from pg_stat_activity where query <> ''",
        "alter system set ssl = off", "select pg_reload_conf()", "select rolpassword from pg_authid", "select passwd from pg_shadow",
        "select set_config('session_authorization', 'office_owner', false); table office.changes",
        $"insert into office.changes values ({house}, 999, 1, 'x:1', '{{}}')", $"insert into office.changes values ({mine}, 999, 1, 'x:1', '{{}}')",
        $"update office.changes set line = 'x' where house = {house}", "update office.changes set arrival = arrival + 1", "delete from office.changes",
        "truncate office.changes", "truncate office.changes, office.pushes, office.houses, office.access, office.cursors",
        $"merge into office.changes c using (values (1)) v (a) on c.arrival = v.a when matched then delete",
        $"insert into office.changes select {house}, 998, push, id, line from office.changes",
        $"update office.houses set last = last + 1 where house = {mine}", $"update office.houses set last = 0", $"update office.houses set begun = '{begun}'",
        $"insert into office.houses (begun, brought_by) values ('{begun}', 'x')", "delete from office.houses",
        $"insert into office.access values ({house}, 'other-van', 'office')",
        "update office.access set part = 'office'", "update office.devices set part = 'office'",
        "insert into office.devices (device, part) values ('more', 'office')",
        "update office.cursors set arrival = 99999", "delete from office.cursors", $"insert into office.cursors values ('owning-van', {house}, 1)",
        $"select office.push({house}, array['{line}'])", $"select office.push({house}, array[]::text[])", $"select office.push({house}, null)",
        "select office.push(null, null)", $"select office.begin_house('{begun}')", $"select office.let_in({house}, 'other-van', 'office')",
        $"select office.let_in({mine}, 'other-van', 'office')", $"select office.let_in({house}, 'owning-van', null)",
        $"select * from office.read_line('{line}')",
        "select office.add_only()", "select nextval('office.pushes_push_seq')", "select setval('office.houses_house_seq', 1)",
        "select last_value from office.houses_house_seq",
        "set search_path = pg_temp, office; select office.me()", $"set search_path = pg_temp; select office.push({house}, array['{line}'])",
        $"begin; lock table office.changes in access exclusive mode; commit", $"begin; select * from office.houses where house = {house} for update; commit",
        $"begin; select * from office.houses where house = {mine} for update; commit", "listen office; notify office, 'x'",
        "create publication p for table office.changes", "create subscription s connection 'host=127.0.0.1' publication p",
        "create server s foreign data wrapper postgres_fdw",
        "comment on table office.changes is 'x'", "analyze office.changes", "vacuum full office.changes", "reindex table office.changes",
        "cluster office.changes using changes_pkey",
        "create index on office.changes (line)", "create rule r as on select to office.changes do instead select 1",
        "create trigger t before insert on office.changes execute function office.add_only()",
        "security label on table office.changes is 'x'", "import foreign schema office from server s into public", "drop owned by office_owner",
        "reassign owned by office_owner to current_user",
        "alter default privileges grant all on tables to public", "alter database trimout owner to current_user",
        "alter function office.me() owner to current_user",
        "create or replace function office.me() returns text language sql as $$ select 'owning-van' $$", "alter function office.push reset all",
        "create operator = (leftarg = int, rightarg = text, function = int4eq)",
    ];
}
