using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Sun;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Sheets;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>Somebody opens a window's sheet, goes to its direction, and sees when the sun is on it.</summary>
public class SunOfAWindowTests
{
    private static readonly FacadeYear East = FacadeYear.Of(SunYear.Of(new Place(39.74, -104.99), HouseZone.Find("America/Denver")!), new Facade(90));

    [Theory]
    [InlineData(160, 48, 12)]
    [InlineData(80, 24, 6)]
    public void TheDirectionOfAWindowShowsItsSunMonthByMonth(int width, int height, int months)
    {
        var lines = AtFacing(Job()).Draw(width, height).ToText().Split('\n');
        var rows = lines.Where(l => Enum.GetNames<Month>().Any(m => l.Contains($" {m[..3]} ", StringComparison.Ordinal) && l.Contains('·'))).ToList();
        Assert.Equal(months, rows.Count);
        Assert.Contains(lines, l => l.Contains("glare", StringComparison.Ordinal) && l.Contains("heat", StringComparison.Ordinal));
    }

    [Fact]
    public void ItsCellsAreWhatTheSunDoesAtThatHour()
    {
        var june = AtFacing(Job()).Draw(160, 48).ToText().Split('\n').Single(l => l.Contains(" Jun ", StringComparison.Ordinal));
        var cells = june[(june.IndexOf(" Jun ", StringComparison.Ordinal) + 5)..];
        var perHour = cells.TrimEnd().Length > 24 ? 2 : 1;
        foreach (var hour in (int[])[3, 6, 7, 9, 11, 15, 22])
        {
            var sign = East.At(6, hour * 60 + 30 / perHour) switch
            {
                SunOnGlass.Night => ' ',
                SunOnGlass.Elsewhere => '·',
                SunOnGlass.Direct => '░',
                SunOnGlass.Glare => '═',
                SunOnGlass.Heat => '▒',
                _ => '█',
            };
            Assert.Equal((hour, sign), (hour, hour * perHour < cells.Length ? cells[hour * perHour] : ' '));
        }
    }

    [Fact]
    public void AHouseThatDoesNotSayWhereItStandsShowsTheWindow()
    {
        var job = new TestJob().Window("W01").Say("W01", WindowFacts.Facing, "E").Say("W01", WindowFacts.RoughWidth, "40")
            .Say("W01", WindowFacts.RoughHeight, "60");
        Assert.DoesNotContain("glare", AtFacing(job).Draw(160, 48).ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void TheTimerOfAPresetIsTypedOnTheSheetOfItsRemote()
    {
        var job = Job().Add(ItemKind.Remote, "R1");
        job.Do(AddItems.Preset(job.House.Remotes[0], "Evening"));
        var shell = new ShellState(new TestDesk(new FakeTimeProvider()), job.Scribe, null, Glyphs.Drawn);
        shell.Press("5");
        shell.Press("enter");
        GoTo(shell, PresetFacts.RunsAt);
        shell.Press("enter");
        shell.TextChanged("5:30 pm");
        shell.Press("enter");
        Assert.Equal(new TimeOnly(17, 30), job.House.Remotes[0].Presets.Single().RunsAt);
    }

    private static ShellState AtFacing(TestJob job)
    {
        var shell = new ShellState(new TestDesk(new FakeTimeProvider()), job.Scribe, null, Glyphs.Drawn);
        shell.Press("enter");
        GoTo(shell, WindowFacts.Facing);
        return shell;
    }

    private static void GoTo(ShellState shell, Fact fact)
    {
        for (var down = 0; ((SheetScreen)shell.Screen).Current?.Fact != fact && down < 200; down++)
            shell.Press("down");
        Assert.Equal(fact, ((SheetScreen)shell.Screen).Current?.Fact);
    }

    private static TestJob Job() => new TestJob().SayOf("", HouseFacts.Latitude, "39.74").SayOf("", HouseFacts.Longitude, "-104.99")
        .SayOf("", HouseFacts.TimeZone, "denver").Window("W01").Say("W01", WindowFacts.Facing, "E").Say("W01", WindowFacts.RoughWidth, "40")
        .Say("W01", WindowFacts.RoughHeight, "60");
}
