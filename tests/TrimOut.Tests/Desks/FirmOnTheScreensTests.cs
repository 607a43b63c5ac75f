using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Desks;
using TrimOut.HouseFile;
using TrimOut.Office;
using TrimOut.Screens.Shell;
using TrimOut.Testing;
using TrimOut.Tests.Campaign;

namespace TrimOut.Tests.Desks;

/// <summary>The list of all houses on the screens, over real files of the user's own folder.</summary>
[Collection(nameof(OneProcess))]
public sealed class FirmOnTheScreensTests : IDisposable
{
    private readonly string? _data = Environment.GetEnvironmentVariable("XDG_DATA_HOME");
    private readonly string _folder = Directory.CreateTempSubdirectory("trimout-firm-").FullName;

    public FirmOnTheScreensTests()
    {
        Environment.SetEnvironmentVariable("XDG_DATA_HOME", _folder);
        Directory.CreateDirectory(UserFolder.Houses);
    }

    public void Dispose()
    {
        Environment.SetEnvironmentVariable("XDG_DATA_HOME", _data);
        Directory.Delete(_folder, recursive: true);
    }

    private static string House(string file) => Path.Combine(UserFolder.Houses, file + ".trimout");

    private static void Begin(string name, string device = "laptop") => HouseOnDisk.Create(House(name), TimeProvider.System,
        new TestJob(store: new MemoryStore(device)).SayOf("", HouseFacts.Name, name).Scribe.Log.Changes).Dispose();

    private static string Seen(ShellState shell) => shell.Draw(80, 24).ToText();

    private static void Until(ShellState shell, string text, bool there = true) => Assert.True(SpinWait.SpinUntil(() =>
    {
        shell.Tick();
        return Seen(shell).Contains(text, StringComparison.Ordinal) == there;
    }, TimeSpan.FromSeconds(60)), Seen(shell));

    [Fact]
    public void WithoutAKeyARowComesWithItsFileAndGoesWithItAndTheCursorStaysOnItsHouse()
    {
        Begin("Elm");
        var shell = new ShellState(new Desk("Ash"), null, beside: work => Task.Run(work));
        shell.Press("J");
        Until(shell, "1 of 1 house");
        Begin("Alder", "van");
        Until(shell, "2 of 2 houses");
        Until(shell, "~", there: false);
        Assert.Contains("Elm: next", Seen(shell), StringComparison.Ordinal);
        File.Delete(House("Alder"));
        Until(shell, "1 of 1 house");
        shell.Press("esc");
    }

    /// <summary>The house file stays as it is: what is known of the office changes beside it, by this program or by another.</summary>
    [Fact]
    public void WhatIsNotAtTheOfficeAndWhatWasPutOffIsSaidAsSoonAsItIsKnown()
    {
        Begin("Elm");
        var office = new Credentials("192.0.2.7", 5432, "trimout", "van", "device-van", "secret", "CERTIFICATE");
        var log = HouseSource.Read(House("Elm"), goOn: false).Log;
        var shell = new ShellState(new Desk("Ash") { AtOffice = new OfficeDesk(() => office) }, null, beside: work => Task.Run(work));
        shell.Press("J");
        Until(shell, $"{log.Changes.Count} not at office");
        // The first change and one of another laptop are there.
        Keep([log.Changes[0].Id, new ChangeId("van", 7)]);
        Until(shell, "1 put off; next");
        var status = ExchangeStatus.Of(OfficePlace.MarkOf(office, log), log);
        Assert.Equal((log.Changes.Count - 1, 1), (status.NotYetThere.Count, status.PutOff));
        Until(shell, $"{log.Changes.Count - 1} not at office");
        Keep([.. log.Changes.Select(c => c.Id)]);
        Until(shell, "put off", there: false);
        Until(shell, "not at office", there: false);
        shell.Press("esc");

        void Keep(ChangeId[] there)
        {
            OfficePlace.Keep(office, log, new ExchangeMark(1, DateTimeOffset.UnixEpoch, [new OfficePoint(1, Guid.Empty, HeldChanges.Of(there).ToString())]));
        }
    }

    /// <summary>Two laptops took the same width, and the one file came into the other: the row says so, until it is settled.</summary>
    [Fact]
    public void AConflictThatAnotherProgramTakesInIsMarked()
    {
        var start = new TestJob(store: new MemoryStore("Elm")).Window("W01").SayOf("", HouseFacts.Name, "Elm").Scribe.Log.Changes;
        var (mine, other) = (new TestJob(store: new MemoryStore("mine", start)), new TestJob(store: new MemoryStore("other", start)));
        mine.Say("W01", WindowFacts.RoughWidth, "36");
        other.Say("W01", WindowFacts.RoughWidth, "37");
        HouseOnDisk.Create(House("elm"), TimeProvider.System, mine.Scribe.Log.Changes).Dispose();
        var shell = new ShellState(new Desk("Ash"), null, beside: work => Task.Run(work));
        shell.Press("J");
        Until(shell, "next: ");
        Assert.DoesNotContain("in conflict", Seen(shell), StringComparison.Ordinal);
        using (var house = HouseOnDisk.Open(House("elm"), TimeProvider.System))
            house.Take(Merge.Of(mine.Scribe.Log, other.Scribe.Log).Value.New);
        Until(shell, "1 in conflict; next: ");
        shell.Press("right");
        shell.Press("right");
        Assert.Contains("W01: Rough width", Seen(shell), StringComparison.Ordinal);
        using (var house = HouseOnDisk.Open(House("elm"), TimeProvider.System))
        {
            var scribe = new Scribe(house, TimeProvider.System, "Ash");
            Assert.True(Conflict.All(scribe.House).Single().Ways[0].Draft.Then(scribe.Record).Ok);
        }
        Until(shell, "No house is in this list: Conflicts.");
        shell.Press("esc");
    }

    /// <summary>Two filters that leave as many houses, and two that would be written alike, make two papers; the same one again makes the same.</summary>
    [Fact]
    public void APaperOverHousesThatWereChosenOtherwiseDoesNotTakeThePlaceOfTheOneBefore()
    {
        Begin("Elm 1", "one");
        Begin("Oak 2", "two");
        Begin("Oak-2", "three");
        var shell = new ShellState(new Desk("Ash"), null);
        shell.Press("J");
        Until(shell, "3 of 3 houses");
        Until(shell, "~", there: false);
        foreach (var filter in new[] { "elm", "oak 2", "oak-2", "oak 2", "" })
        {
            shell.Press("/");
            shell.TextChanged(filter);
            shell.Press("enter");
            shell.Press("w");
            shell.TextChanged("call-off");
            shell.Press("enter");
            Assert.Contains("Written:", Seen(shell), StringComparison.Ordinal);
        }
        shell.Press("esc");
        var written = Directory.GetFiles(UserFolder.PapersOverHouses, "*.md").Select(Path.GetFileNameWithoutExtension).ToList();
        Assert.Equal(4, written.Count);
        Assert.Contains(written, w => w!.Contains("-elm-1-of-3-houses", StringComparison.Ordinal));
        Assert.Contains(written, w => w!.Contains("-oak-2-2-of-3-houses", StringComparison.Ordinal));
        Assert.Single(written, w => System.Text.RegularExpressions.Regex.IsMatch(w!, "-oak-2-[0-9a-f]{6}-1-of-3-houses$"));
        Assert.Single(written, w => System.Text.RegularExpressions.Regex.IsMatch(w!, @"^call-off-\d{4}-\d\d-\d\d$"));
    }
}
