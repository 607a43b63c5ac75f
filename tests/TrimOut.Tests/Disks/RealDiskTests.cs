using System.Globalization;
using TrimOut.Core.History;
using TrimOut.HouseFile;
using TrimOut.Tests.Terminals;

namespace TrimOut.Tests.Disks;

/// <summary>The real program on real disks that are read-only, full or pulled out: on the screens and by verbs.</summary>
public sealed class RealDiskTests : IDisposable
{
    private readonly RunTrimOut _run = new();

    public RealDiskTests()
    {
        Assert.Equal(0, _run.Run("new", "elm").Code);
        File.WriteAllText(_run.In("s.csv"), "tag,width\nW01,30\n");
        Assert.Equal(0, _run.Run("import", "elm.trimout", "s.csv").Code);
    }

    public void Dispose() => _run.Dispose();

    private string OnStick(string name) => _run.In(Path.Combine("stick", name));

    private SmallDisk Stick(string size)
    {
        var disk = new SmallDisk(_run.In("stick"), size);
        File.Copy(_run.In("elm.trimout"), OnStick("elm.trimout"));
        return disk;
    }

    private PseudoTerminal Open() => new(_run.Folder, 80, 24, "LANG=C.UTF-8 TERM=xterm", "open", OnStick("elm.trimout"), "--by", "Ash");

    private static HouseLog Read(string path)
    {
        using var house = HouseOnDisk.OpenToRead(path, TimeProvider.System);
        return HouseLog.Of(house.Opened).Value;
    }

    /// <summary>Opens the tag of the first window, types another and takes it.</summary>
    private static PseudoTerminal Retag(PseudoTerminal terminal, string tag)
    {
        terminal.Send("\r").WaitFor("Walk-through").Forget().Send("\r").WaitFor("take it");
        return terminal.Forget().Send(tag + "\r");
    }

    [MountFact]
    public void OnAReadOnlyDiskAHouseIsLookedAtAndWorkedOnInACopy()
    {
        using var stick = Stick("4m");
        stick.MakeReadOnly();
        var refused = _run.RunWith("W01\tnote\tx\n", "set", OnStick("elm.trimout"));
        Assert.Equal(74, refused.Code);
        Assert.Contains($"the disk that {OnStick("elm.trimout")} is on is read-only", refused.Error);
        using var terminal = Open();
        terminal.WaitFor("open for reading only").WaitFor("READING ONLY").WaitFor("goes on").Send("\r").WaitFor("Job sheet");
        Retag(terminal, "W77").WaitFor("Not saved");
        terminal.Forget().Send("\u001bOQ").WaitFor("Write the whole house to").Send("\r").WaitFor("elm-copy-1").Send("\r").WaitFor("Saved: ").Send("qq");
        Assert.Equal(0, terminal.WaitForExit());
        Assert.Equal("W77", Assert.Single(Read(_run.In("data/trimout/houses/elm-copy-1.trimout")).House.Windows).Tag);
        Assert.Equal("W01", Assert.Single(Read(OnStick("elm.trimout")).House.Windows).Tag);
        Assert.Equal(["elm.trimout"], Directory.GetFiles(_run.In("stick")).Select(f => Path.GetFileName(f)));
    }

    [MountFact]
    public void OnAFullDiskEverySaveThatWasSaidToBeOneIsThereAndTheRestGoesElsewhere()
    {
        using var stick = Stick("256k");
        var lines = string.Concat(Enumerable.Range(1, 400)
            .Select(n => string.Create(CultureInfo.InvariantCulture, $"W01\tnote\tnote {n} {new string('x', 300)}\n")));
        var set = _run.RunWith(lines, "set", OnStick("elm.trimout"));
        var saved = set.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length;
        Assert.Equal(74, set.Code);
        Assert.InRange(saved, 10, 399);
        Assert.Contains($"the disk that {OnStick("elm.trimout")} is on is full", set.Error);
        Assert.Equal(2 + saved, Read(OnStick("elm.trimout")).Changes.Count);
        Assert.DoesNotContain(Directory.GetFiles(_run.In("stick")), f => f.EndsWith(".new", StringComparison.Ordinal));

        using var terminal = Open();
        terminal.WaitFor("open for reading only").WaitFor("is full").Send("\r").WaitFor("Job sheet");
        Retag(terminal, "W77").WaitFor("Not saved");
        terminal.Forget().Send("\u001bOQ").WaitFor("Write the whole house to").Send("\r").WaitFor("elm-copy-1").Send("\r").WaitFor("Saved: ").Send("qq");
        Assert.Equal(0, terminal.WaitForExit());
        var copy = Read(_run.In("data/trimout/houses/elm-copy-1.trimout"));
        Assert.Equal(("W77", 3 + saved), (Assert.Single(copy.House.Windows).Tag, copy.Changes.Count));

        stick.MakeRoom();
        Assert.Equal(0, _run.RunWith("W01\tnote\tagain\n", "set", OnStick("elm.trimout")).Code);
        Assert.Equal(3 + saved, Read(OnStick("elm.trimout")).Changes.Count);
    }

    [MountFact]
    public void ADiskThatFillsUpWhileTheHouseIsOpenRefusesTheSaveAndKeepsWhatWasTyped()
    {
        using var stick = Stick("512k");
        using var terminal = Open();
        terminal.WaitFor("Job sheet");
        Retag(terminal, "W70").WaitFor("Saved: ");
        stick.FillUp();
        terminal.Send("6").WaitFor("Punch list").Forget();
        var note = new string('n', 150);
        // A journal has taken room beforehand, which some dozens of saves fill up.
        var refused = false;
        for (var item = 0; item < 60 && !refused; item++)
        {
            var before = Read(OnStick("elm.trimout")).Changes.Count;
            terminal.Forget().Send("n").WaitFor("To fix:").Send(string.Create(CultureInfo.InvariantCulture, $"{item} {note}\r"));
            Assert.True(SpinWait.SpinUntil(() => (refused = terminal.Seen.Contains("NOT SAVED", StringComparison.Ordinal))
                || Read(OnStick("elm.trimout")).Changes.Count > before, TimeSpan.FromMinutes(1)), terminal.Seen);
        }
        Assert.True(refused);
        terminal.WaitFor("Not saved: the disk");
        terminal.Forget().Send("\u001bOQ").WaitFor("Write the whole house to").Send("\r").WaitFor("Enter saves what").Forget().Send("\r").WaitFor("Saved: ")
            .Send("qq");
        Assert.Equal(0, terminal.WaitForExit());
        var (copy, original) = (Read(_run.In("data/trimout/houses/elm-copy-1.trimout")), Read(OnStick("elm.trimout")));
        Assert.Equal(original.Changes.Count + 1, copy.Changes.Count);
    }

    [MountFact]
    public void AStickThatIsPulledOutLeavesNothingInTheEmptyFolderAndTheWorkGoesElsewhere()
    {
        using var stick = Stick("4m");
        using var terminal = Open();
        terminal.WaitFor("Job sheet");
        stick.PullOut();
        Retag(terminal, "W88").WaitFor("Not saved").WaitFor("was removed, moved or");
        Assert.Empty(Directory.GetFileSystemEntries(_run.In("stick")));
        terminal.Forget().Send("\u001bOQ").WaitFor("Write the whole house to").Send("\r").WaitFor("Enter saves what").Forget().Send("\r").WaitFor("Saved: ")
            .Send("qq");
        Assert.Equal(0, terminal.WaitForExit());
        Assert.Equal("W88", Assert.Single(Read(_run.In("data/trimout/houses/elm-copy-1.trimout")).House.Windows).Tag);
        Assert.Empty(Directory.GetFileSystemEntries(_run.In("stick")));
    }
}
