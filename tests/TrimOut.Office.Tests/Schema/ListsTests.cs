using System.Globalization;
using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Parts;
using TrimOut.HouseFile.Texts;
using TrimOut.Testing;

namespace TrimOut.Office.Tests.Schema;

/// <summary>The views say what the program says of the same history.</summary>
public class ListsTests(OfficeServer server) : IClassFixture<OfficeServer>
{
    [OfficeFact]
    public async Task TheViewsSayOfEachSampleWhatTheProgramSays()
    {
        var desk = await server.Enroll("lists-desk", "office");
        foreach (var folder in Directory.GetDirectories(Path.Combine(Repository.Root, "sample-jobs")))
        {
            var log = HistoryText.Read(await File.ReadAllTextAsync(Path.Combine(folder, HistoryText.FileName))).Value;
            var number = (await desk.Exchange(Houses.Copy(log), null)).House;
            // What the server holds, in the order in which it arrived, folded here.
            var lines = (await Sql.Try(desk, $"select line from office.changes where house = {number} order by random()")).Split('\n');
            var house = HouseLog.Of(lines.Select(l => ChangeJson.Read(l).Value)).Value.House;
            var report = CheckReport.Of(house);

            await Says(desk, $"select name, units, open_stops, steps_done, steps, changes, changes_behind from report.houses where house = {number}",
                [$"{house.Name}|{house.Units.Length}|{report.OpenStops.Count()}|{PhaseNames.All.Sum(p => Progress.Of(house, p).Done)}|"
                    + $"{PhaseNames.All.Sum(p => Progress.Of(house, p).Total)}|{lines.Length}|0"]);
            await Says(desk, $"select tag, room, kind, phase, next_step, order_width_mm from report.units where house = {number}", house.Units.Select(u =>
                $"{u.Tag}|{u.Window.Room?.Name}|{u.Kind?.Name}|{Progress.Current(u)?.Full()}|{Progress.Next(u)?.Label}|"
                    + $"{Plain(u.Item.Get(UnitFacts.OrderWidth)?.Millimetres)}"));
            await Says(desk, $"select number, phase, steps_done, steps, open_stops from report.phases where house = {number}", PhaseNames.All.Select(p =>
                $"{(int)p + 1}|{p.Full()}|{Progress.Of(house, p).Done}|{Progress.Of(house, p).Total}|{report.StopsIn(p)}"));
            await Says(desk, $"select sort, about, says, check_id from report.open_items where house = {number}", [
                .. report.Findings.Where(f => f.Open).Select(f => $"{KebabCase.Of(f.Check.Severity)}|{house.NameOf(f.Subject)}|"
                    + $"{f.Found.Message.In(house)}|{f.Check.Id}"),
                .. house.PunchItems.Where(p => p.Open).Select(p => $"written|{(p.About is { } about ? house.NameOf(about) : "")}|"
                    + $"{p.Item.Get(PunchFacts.What)}|")]);
            await Says(desk, $"select unit, first_loop_ohm, second_apart_ohm, open_volt, output from report.tests where house = {number}",
                house.Runs.Select(r => $"{r.Unit.Tag}|{Plain(r.Item.Get(RunFacts.FirstLoop)?.Ohms)}|{Plain(r.Item.Get(RunFacts.SecondApart)?.Ohms)}|"
                    + $"{Plain(r.Item.Get(RunFacts.OpenVolts)?.Volts)}|{r.Output}"));
            await Says(desk, $"select part_group, part, count, unit, counted_from from report.parts where house = {number}", HouseParts.Of(house).Select(l =>
                $"{KebabCase.Of(l.Group)}|{l.Part.In(house)}|{Plain(l.Count)}|{l.Unit}|{l.CountedFrom.In(house)}"));

            // What was approved of the sample.
            var approved = (await File.ReadAllLinesAsync(Path.Combine(folder, "expected-findings.txt"))).Where(l => l.Contains(" | ", StringComparison.Ordinal)
                && !l.StartsWith("missing", StringComparison.Ordinal)
                && !l[..l.IndexOf('|', StringComparison.Ordinal)].Contains("waived", StringComparison.Ordinal));
            var open = await Sql.Try(desk, "select concat_ws(' | ', sort, check_id, about, says) "
                + $"from report.open_items where house = {number} and sort <> 'written'");
            Assert.Equal(approved.Order(StringComparer.Ordinal), Lines(open).Order(StringComparer.Ordinal));
        }
    }

    [OfficeFact]
    public async Task ListsThatAreBehindAreSaidToBeAndAreCaughtUp()
    {
        var (van, desk) = (await server.Enroll("behind-van"), await server.Enroll("behind-desk", "office"));
        var house = Houses.Begin("House that is behind");
        var mark = await van.Exchange(house, null);
        var note = house.Note("sent by somebody who went away at once");
        await using var office = await OfficeConnection.Open(desk, default);
        await office.Send(mark.House, [ChangeJson.Write(note)], default);
        Assert.False(await office.KeepLists(mark.House, 1, """{"house":{"name":"of an earlier day"}}""", default));
        var behind = $"select name, changes_behind from report.houses where house = {mark.House}";
        Assert.Equal("House that is behind\n1", await Sql.Try(desk, behind));
        await Exchange.CatchUp(office, (_, _) => { }, default);
        Assert.Equal("House that is behind\n0", await Sql.Try(desk, behind));
        Assert.Equal("sent by somebody who went away at once", await Sql.Try(desk, $"select address from report.houses where house = {mark.House}"));
    }

    [OfficeFact]
    public async Task AReaderSeesTheListsOfItsHouseAndOfNoOther()
    {
        var (van, desk, client) = (await server.Enroll("two-van"), await server.Enroll("two-desk", "office"), await server.Enroll("two-client", "reader"));
        var shown = (await van.Exchange(Houses.Begin("Shown in lists"), null)).House;
        await van.Exchange(Houses.Begin("Not shown in lists"), null);
        await using (var office = await OfficeConnection.Open(desk, default))
            await office.LetIn(shown, "two-client", "reader", default);
        Assert.Equal("Shown in lists", await Sql.Try(client, "select name from report.houses"));
        Assert.Equal("11", await Sql.Try(client, "select count(*) from report.phases"));
    }

    private static async Task Says(Credentials who, string query, IEnumerable<string> expected)
    {
        var said = Lines(await Sql.Try(who, query));
        Assert.Equal(expected.SelectMany(row => row.Split('|')).Select(Flat), said.Select(Flat));
    }

    private static string[] Lines(string said) => said.Length == 0 ? [] : said.Split('\n');

    private static string Flat(string text) => text.Trim();

    private static string Plain(decimal? number) => number?.ToString(CultureInfo.InvariantCulture) ?? "";

    [OfficeFact]
    public async Task TheListOfHousesHasTheirNames()
    {
        var van = await server.Enroll(Houses.Fresh("naming-van"));
        var number = (await van.Exchange(Houses.Begin("House with a name"), null)).House;
        await using var office = await OfficeConnection.Open(van, default);
        Assert.Equal("House with a name", (await office.Houses(default)).Single(h => h.House == number).Name);
        await Sql.Try(server.Owner, $"delete from office.summaries where house = {number}");
        Assert.Null((await office.Houses(default)).Single(h => h.House == number).Name);
    }

    /// <summary>All of one unit is hung, a second one waits for its walk-through: the work is at hanging.</summary>
    [Fact]
    public void ThePhaseOfAHouseIsTheFurthestInWork()
    {
        var job = new TestJob().Window("W01").Window("W02");
        Assert.Contains("\"phase\":\"Walk-through\"", HouseLists.Of(job.House)[..600], StringComparison.Ordinal);
        job.Do(Core.Decisions.MarkStep.NotNeeded(job.Unit("W01"), StepList.Find("brackets-fixed")!, "test"));
        Assert.Contains($"\"phase\":\"{Phase.Hang.Full()}\"", HouseLists.Of(job.House)[..600], StringComparison.Ordinal);
    }
}
