using TrimOut.Desks;
using TrimOut.HouseFile;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Tests.Desks;

/// <summary>Copies of a house are found beside it and on sticks, and read without touching them.</summary>
public sealed class CopyFinderTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("trimout-copies-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string In(string name)
    {
        var path = Path.Combine(_folder, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        return path;
    }

    private static void Make(string path) => HouseOnDisk.Create(path, TimeProvider.System, new TestJob().Window("W01").Scribe.Log.Changes).Dispose();

    [Fact]
    public void CopiesOfTheHouseComeFirstAndTheHouseItselfIsNotAmongThem()
    {
        Make(In("elm.trimout"));
        File.Copy(In("elm.trimout"), In("stick/elm from site.trimout"));
        Make(In("stick/oak.trimout"));
        File.WriteAllText(In("stick/torn.trimout"), "no house at all");
        var found = CopyFinder.Of(In("elm.trimout"), [In("stick"), In("not-there")]);
        Assert.Equal("elm from site", found[0].Name);
        Assert.True(found[0].Same);
        Assert.Equal([("oak", (bool?)false), ("torn", null)], found.Skip(1).Select(c => (c.Name, c.Same)).Order());
        Assert.NotNull(found[0].Changed);
    }

    [Fact]
    public void TheDeskReadsACopyAsTheVerbDoesAndSaysWhatIsWrongWithOne()
    {
        Make(In("elm.trimout"));
        var desk = new Desk("Ash");
        Assert.NotEmpty(desk.ReadCopy(In("elm.trimout")).Value.Log.Changes);
        Assert.Contains("no house file", desk.ReadCopy(Written(In("junk.trimout"), "junk")).Reason, StringComparison.Ordinal);
        Assert.Contains("none.trimout", desk.ReadCopy(In("none.trimout")).Reason, StringComparison.Ordinal);
        var bytes = File.ReadAllBytes(In("elm.trimout"));
        bytes[5000] ^= 0x40;
        File.WriteAllBytes(In("torn.trimout"), bytes);
        Assert.Contains("damaged", desk.ReadCopy(In("torn.trimout")).Reason, StringComparison.Ordinal);
        Assert.NotEmpty(desk.ReadCopy(Path.Combine(Repository.Root, "sample-jobs", "canal-house")).Value.Log.Changes);
    }

    [Fact]
    public void WhoTakesACopyInOnTheScreensHasItOnTheDisk()
    {
        Make(In("elm.trimout"));
        File.Copy(In("elm.trimout"), In("site.trimout"));
        using (var site = HouseOnDisk.Open(In("site.trimout"), TimeProvider.System))
        {
            var bo = new Core.History.Scribe(site, TimeProvider.System, "Bo");
            Assert.True(Core.Decisions.AddItems.Window(bo.House, "W02", null).Then(bo.Record).Ok);
        }
        var before = File.ReadAllBytes(In("site.trimout"));
        using (var mine = HouseOnDisk.Open(In("elm.trimout"), TimeProvider.System))
        {
            var ada = new Core.History.Scribe(mine, TimeProvider.System, "Ada");
            Assert.True(Core.Decisions.AddItems.Window(ada.House, "W03", null).Then(ada.Record).Ok);
            var shell = new ShellState(new Desk("Ada"), ada);
            foreach (var key in (string[])["8", "O"])
                shell.Press(key);
            Assert.True(shell.Screen is Screens.Copies.CopiesScreen);
            shell.Press("O");
            shell.TextChanged(In("site.trimout"));
            foreach (var key in (string[])["enter", "enter", "y"])
                shell.Press(key);
            Assert.NotNull(ada.House.FindTag("W02"));
            Assert.True(Core.Decisions.AddItems.Window(ada.House, "W04", null).Then(ada.Record).Ok);
        }
        using var again = HouseOnDisk.Open(In("elm.trimout"), TimeProvider.System);
        var house = new Core.History.Scribe(again, TimeProvider.System, "Ada").House;
        Assert.Equal(["W01", "W02", "W03", "W04"], house.Windows.Select(w => w.Tag).Order());
        Assert.Equal(before, File.ReadAllBytes(In("site.trimout")));
    }

    private static string Written(string path, string text)
    {
        File.WriteAllText(path, text);
        return path;
    }
}
