using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Hours;
using TrimOut.Core.Plans.Parts;
using TrimOut.Core.Units;
using TrimOut.Desks;
using TrimOut.HouseFile;
using TrimOut.Office;
using TrimOut.Papers;
using TrimOut.Papers.Tests.Photos;
using TrimOut.Screens.Tests;
using TrimOut.Testing;

namespace TrimOut.Tests.WholeJob;

public sealed class WholeJobTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("trimout-whole-job-").FullName;

    [Fact]
    public async Task FromTheFramingHouseToASignedOffBinderByKeyboard()
    {
        Environment.SetEnvironmentVariable("XDG_DATA_HOME", _folder);
        // Started beside the job, so that nobody waits for it.
        await using var office = new OfficeOfTheJob();
        var clock = new FakeTimeProvider(new DateTimeOffset(2026, 9, 30, 9, 0, 0, TimeSpan.Zero));
        var desk = new Desk("Ash", clock);
        var scribe = desk.Open(Path.Combine(Repository.Root, "sample-jobs", "ridge-house")).Value;
        var file = scribe.Store.Where;
        Assert.Contains(CheckReport.Of(scribe.House).OpenStops, f => f.Check.Phase == Phase.RoughIn);

        using (var user = new TerminalUser(desk, scribe))
        {
            var installer = new Installer(user);
            installer.CallOffParts();
            installer.DoTheWholeJob();
            installer.TypeHours(Phase.Hang, "14.5");
            user.Press("7", "w").Sees("Written:");
            user.Press("q", "q");
            Assert.True(user.Shell.Left);
            desk.Close(scribe);
        }

        var again = desk.Open(file).Value;
        Assert.All(PhaseNames.All, phase => Assert.True(Progress.Of(again.House, phase).Complete, phase.ToString()));
        Assert.Empty(CheckReport.Of(again.House).OpenStops);
        var hang = PhaseHours.Of(again.Log)[(int)Phase.Hang];
        Assert.Equal((14.5m, HoursFrom.Typed, true), (hang.Counted, hang.From, hang.IsOver));
        Assert.Contains(HouseParts.Of(again.House), l => l is { Group: PartGroup.Spares, Count: > 0 });
        var binder = Binder.Paper.Write(PaperData.Of(again.Log, new DateOnly(2026, 9, 30)) with
        {
            FilesOf = "ridge-house",
            Photos = PhotoFiles.Of(file).Read,
        }).Markdown;
        Assert.Equal(File.ReadAllText(Directory.GetFiles(Path.GetDirectoryName(file)!, "*-binder.md").Single()), binder);
        Approved.Match(binder, "signed-off");
        desk.Close(again);
        SeenAmongTheFirmsHouses(new Desk("Ash", clock));
        if (await office.Credentials is { } credentials)
            await GoesToTheOffice(new Desk("Ash", clock) { AtOffice = new OfficeDesk(() => credentials) }, file, credentials);
    }

    /// <summary>Beside a house that was only begun: all eleven phases done, all units finished, no stop.</summary>
    private static void SeenAmongTheFirmsHouses(Desk desk)
    {
        desk.Close(desk.Create("Alder house", DisplayUnits.Inches, []).Value);
        using var user = new TerminalUser(desk);
        user.Press("J");
        Assert.True(SpinWait.SpinUntil(() => !user.Press("end").Screen.Contains('~'), TimeSpan.FromSeconds(60)), user.Screen);
        user.Sees("2 of 2 houses").Sees("Alder house");
        Assert.Matches(@"^ Ridge house +■{11} +(\d+)/\1 +finished",
            user.Screen.Split('\n').Single(l => l.StartsWith(" Ridge house  ", StringComparison.Ordinal)));
        user.Press("enter").Sees("Ridge house").Press("esc", "y").Sees("All houses").Press("esc");
    }

    /// <summary>By the key that exchanges; afterwards the office has each change, byte for byte.</summary>
    private static async Task GoesToTheOffice(Desk desk, string file, Credentials office)
    {
        var scribe = desk.Open(file).Value;
        var changes = scribe.Log.Changes.Select(ChangeJson.Write).ToList();
        using (var user = new TerminalUser(desk, scribe))
        {
            user.Sees($"{changes.Count} not at").Press("8", "@", "enter").Sees($"Sent to the office: {NumberText.Plain(changes.Count)} changes")
                .DoesNotSee("not at office");
        }
        desk.Close(scribe);
        await using var connection = await OfficeConnection.Open(office, default);
        Assert.Equal(changes, (await connection.Fetch(1, 0, default, changes.Count + 1, default)).Select(a => a.Line));
    }

    [Fact]
    public void FromABlankKitOverItsSheetsToASignedOffHouseByKeyboard()
    {
        Environment.SetEnvironmentVariable("XDG_DATA_HOME", _folder);
        var clock = new FakeTimeProvider(new DateTimeOffset(2026, 3, 2, 9, 0, 0, TimeSpan.Zero));
        var desk = new Desk("Ash", clock);
        var scribe = desk.Create("Blank house", DisplayUnits.Inches, []).Value;
        using (var user = new TerminalUser(desk, scribe))
        {
            user.Sees("blanks");
            user.Press("n").Type("W01 roller left 36x60 S floor inside panel @Kitchen");
            user.Type("W02").Type("W03 30x48 @Study");
            user.Press("esc");
            Assert.False(user.Shell.Context.Report.WaitingForSheets.None);
            new SheetReader(user).ReadAll();
            new Installer(user) { PhotosOfTheWall = Stick() }.DoTheWholeJob();
            Assert.All(PhaseNames.All, phase => Assert.True(Progress.Of(user.House, phase).Complete, phase.ToString()));
            Assert.All(user.House.Units, u => Assert.Matches($@"^Blank-house-photos/{u.Tag} wall-[0-9a-f]{{10}}\.jpg$", u.Run!.Show(RunFacts.Photo)));
            var record = PaperFiles.Find("test-record").Value.Write(PaperData.Of(scribe.Log, new DateOnly(2026, 3, 12)) with
            {
                Photos = PhotoFiles.Of(scribe.Store.Where).Read,
            });
            Assert.Equal(3, record.Drawings.Count(d => d.Value.Contains("data:image/jpeg", StringComparison.Ordinal)));
            Assert.True(user.Shell.Context.Report.WaitingForSheets.None);
            Assert.Empty(user.Shell.Context.Report.OpenStops);
            clock.SetUtcNow(new DateTimeOffset(2026, 9, 3, 9, 0, 0, TimeSpan.Zero));
            ServeAfterHandover(user);
            user.Press("9", "home", "k").Sees("Kept");
            desk.Close(scribe);
        }
        Assert.Equal("Roller", Assert.Single(desk.Kit).Part.Value.Name);
    }

    /// <summary>A stick with a photo of the open wall at each window.</summary>
    private string Stick()
    {
        var stick = Directory.CreateDirectory(Path.Combine(_folder, "stick")).FullName;
        foreach (var (seed, tag) in new[] { "W01", "W02", "W03" }.Index())
        {
            File.WriteAllBytes(Path.Combine(stick, $"{tag} wall.jpg"),
                CameraPhoto.Jpeg([], taken: new DateTime(2026, 3, 2, 9, seed, 0), seed: seed, wide: 400, high: 300));
        }
        return stick;
    }

    /// <summary>Half a year later a unit fails, and a remote too: what that undid is done again by keyboard, and stands in the next book.</summary>
    private static void ServeAfterHandover(TerminalUser user)
    {
        var installer = new Installer(user);
        var before = user.House.Units[0].Show(UnitFacts.Serial);
        installer.Serve("W01 replaced 2026-09-02 @Ash, serial N-1, claim C-1, granted, motor hums");
        installer.Serve($"{user.House.Remotes[0].Name} replaced 2026-09-03 @Ash");
        Assert.All(PhaseNames.All, phase => Assert.True(Progress.Of(user.House, phase).Complete, phase.ToString()));
        Assert.Empty(user.Shell.Context.Report.OpenStops);
        var binder = Binder.Paper.Write(PaperData.Of(user.Shell.Context.Log, new DateOnly(2026, 9, 4))).Markdown;
        Assert.Contains("What was done in service", binder, StringComparison.Ordinal);
        Assert.Contains("Changed since the book of", binder, StringComparison.Ordinal);
        Assert.Equal(("N-1", before), (user.House.Units[0].Show(UnitFacts.Serial), user.House.Services.First().Show(ServiceFacts.OldSerial)));
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
