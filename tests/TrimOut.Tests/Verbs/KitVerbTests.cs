using TrimOut.Core.Kits;
using TrimOut.Desks;

namespace TrimOut.Tests.Verbs;

public sealed class KitVerbTests : IDisposable
{
    private readonly RunTrimOut _run = new();
    private readonly string _folder = Directory.CreateTempSubdirectory("trimout-kit-").FullName;

    private static readonly string Orchard = Path.Combine(TrimOut.Testing.Repository.Root, "sample-jobs", "orchard-cottage");

    public void Dispose()
    {
        _run.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    [Fact]
    public void ANewHouseSaysHowManyBlanksItsKitHas()
    {
        var ended = _run.Run("new", Path.Combine(_folder, "blank"));
        Assert.Equal(0, ended.Code);
        Assert.Matches("Its kit has [0-9]+ blanks", ended.Error);
    }

    [Fact]
    public void AKitGoesFromOneHouseToTheNext()
    {
        var kit = Path.Combine(_folder, "kit");
        Assert.Equal(0, _run.Run("kit-out", Orchard, "--kit", kit).Code);
        var panel = Directory.GetFiles(kit, "panel-type-*").Single();
        Assert.Contains("held-by: Lea", File.ReadAllText(panel), StringComparison.Ordinal);

        var next = Path.Combine(_folder, "next.trimout");
        Assert.Equal(0, _run.Run("new", next, "--kit", kit).Code);
        Assert.Matches(@"(?m)^panel-type\tPanel, 14 outputs\t\d+\t\d+\t0\t0$", _run.Run("kit", next).Output);

        File.WriteAllText(panel, File.ReadAllText(panel).Replace("outputs: 14", "outputs: 9", StringComparison.Ordinal));
        var tried = _run.Run("kit-in", next, panel, "--try");
        Assert.Equal("Panel, 14 outputs\tOutputs\t14\t9\n", tried.Output);
        Assert.Contains("this was a try", tried.Error, StringComparison.Ordinal);
        Assert.Contains("Saved: ", _run.Run("kit-in", next, panel).Error, StringComparison.Ordinal);
        Assert.Empty(_run.Run("kit-in", next, panel).Output);
    }

    [Fact]
    public void ANewerEditionSaysWhatItLacksAndTheKitVerbCountsWhatIsNoPartAsNothing()
    {
        var (house, file) = (Path.Combine(_folder, "lacks.trimout"), Path.Combine(_folder, "panel" + PartFolder.Ending));
        _run.Run("new", house);
        Assert.Matches(@"(?m)^head-cover\tNone\t0\t0\t0\t0$", _run.Run("kit", house).Output);
        const string Head = "trimout-part: 1\nkind: panel-type\nname: Panel\nsheet: S\nedition: {0}\nheld-by: Ash\nheld-on: 2026-03-02\n"
            + "held-sheet: S\nheld-edition: {0}\n";
        File.WriteAllText(file, Head.Replace("{0}", "1", StringComparison.Ordinal) + "outputs: 9\ntotal-current: 6\n");
        Assert.Equal(0, _run.Run("kit-in", house, file).Code);
        File.WriteAllText(file, Head.Replace("{0}", "2", StringComparison.Ordinal) + "outputs: 9\n");
        var tried = _run.Run("kit-in", house, file, "--try");
        Assert.Equal("Panel\tEdition\t1\t2\n", tried.Output);
        Assert.Contains("Current of all outputs: 6 A is not in this edition. It stays, and is not checked.", tried.Error, StringComparison.Ordinal);
        Assert.Contains("To take it needs --yes, for these were checked against a sheet, and would no longer be: Current of all outputs.", tried.Error,
            StringComparison.Ordinal);
        Assert.DoesNotContain("taken as not checked", tried.Error, StringComparison.Ordinal);
        var refused = _run.Run("kit-in", house, file);
        Assert.NotEqual(0, refused.Code);
        Assert.Contains("would no longer be: Current of all outputs. --yes takes the part all the same.", refused.Error, StringComparison.Ordinal);
        Assert.Equal(0, _run.Run("kit-in", house, file, "--yes").Code);
        Assert.Matches(@"(?m)^panel-type\tPanel\t\d+\t\d+\t1\t", _run.Run("kit", house).Output);
    }

    [Fact]
    public void ANewHouseNamesTheBlankPartsThatItsKitTakesThePlaceOf()
    {
        var kit = Path.Combine(_folder, "other");
        Directory.CreateDirectory(kit);
        File.WriteAllText(Path.Combine(kit, "p" + PartFolder.Ending), "trimout-part: 1\nkind: covering-kind\nname: Shade of mine\n");
        Assert.Contains("because the folder has others of their sort: Roller, Cellular, Wood blind.",
            _run.Run("new", Path.Combine(_folder, "other-house"), "--kit", kit).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void APartSaysWhyItsValuesAreNotCheckedAndWhereItCameFrom()
    {
        var (house, file) = (Path.Combine(_folder, "why.trimout"), Path.Combine(_folder, "hub" + PartFolder.Ending));
        _run.Run("new", house, "--units", "millimetres");
        File.WriteAllText(file, "trimout-part: 1\nkind: hub-type\nname: Hub\nheld-by: Ash\nheld-on: 2026-03-02\n? devices: 7\n");
        var taken = _run.Run("kit-in", house, file);
        Assert.Contains("The file marks them so, with a ? before the name.", taken.Error, StringComparison.Ordinal);
        Assert.Contains("Saved: Hub, from the file hub.part.txt.", taken.Error, StringComparison.Ordinal);
        Assert.Contains("value for value; 1 value of it is not checked against the sheet.", _run.Run("kit-in", house, file).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void APartThatWasCheckedAgainstAnotherEditionThanItsFileSaysNowGivesThatAsTheReason()
    {
        var (house, file) = (Path.Combine(_folder, "other-edition.trimout"), Path.Combine(_folder, "hub" + PartFolder.Ending));
        _run.Run("new", house);
        File.WriteAllText(file, "trimout-part: 1\nkind: hub-type\nname: Hub\nedition: 09/2026\nheld-by: Ash\nheld-on: 2026-03-02\nheld-edition: 07/2025\n"
            + "devices: 7\n");
        var taken = _run.Run("kit-in", house, file);
        Assert.Contains(
            "The values of Hub count as not checked: they were checked against another one (held-edition: 07/2025, and edition: 09/2026).", taken.Error,
            StringComparison.Ordinal);
        Assert.DoesNotContain("with a ?", taken.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void APartWhoseFileNoLongerSaysWhichEditionItWasHeldAgainstIsToBeCheckedAgain()
    {
        var (house, file) = (Path.Combine(_folder, "no-edition.trimout"), Path.Combine(_folder, "hub" + PartFolder.Ending));
        _run.Run("new", house);
        File.WriteAllText(file, "trimout-part: 1\nkind: hub-type\nname: Hub\nedition: 09/2026\nheld-by: Ash\nheld-on: 2026-03-02\ndevices: 7\n");
        Assert.Contains("The values of Hub count as not checked: its file says against no known edition. Check again.",
            _run.Run("kit-in", house, file).Error, StringComparison.Ordinal);
    }

    /// <summary>A file that names no edition says of none what it was checked against: not of the one of the house, nor of that of the folder.</summary>
    [Fact]
    public void AFileThatNamesNoEditionBringsNoCheckedValueWhereThereIsOne()
    {
        var (house, kit) = (Path.Combine(_folder, "of-two.trimout"), Path.Combine(_folder, "kit"));
        Directory.CreateDirectory(kit);
        var (of2, of0) = (Path.Combine(kit, "hub-type-hub" + PartFolder.Ending), Path.Combine(_folder, "hub" + PartFolder.Ending));
        File.WriteAllText(of2, "trimout-part: 1\nkind: hub-type\nname: Hub\nedition: 2\nheld-by: Ash\nheld-on: 2026-03-02\nheld-edition: 2\ndevices: 20\n");
        File.WriteAllText(of0, "trimout-part: 1\nkind: hub-type\nname: Hub\nheld-by: Pat\nheld-on: 2026-03-03\ndevices: 18\n");
        _run.Run("new", house);
        Assert.Equal(0, _run.Run("kit-in", house, of0).Code);
        Assert.Contains("--replace keeps these all the same", _run.Run("kit-out", house, "--kit", kit).Error, StringComparison.Ordinal);
        Assert.Equal(0, _run.Run("kit-in", house, of2, "--yes").Code);
        foreach (var asked in new[] { _run.Run("kit-in", house, of0, "--try"), _run.Run("kit-in", house, of0) })
        {
            Assert.Contains("The values of Hub count as not checked: its file says against no known edition. Check again.", asked.Error,
                StringComparison.Ordinal);
            Assert.DoesNotContain("counts as checked", asked.Error, StringComparison.Ordinal);
            Assert.DoesNotContain("Pat", asked.Output, StringComparison.Ordinal);
        }
        Assert.Equal(ExitCode.Usage, _run.Run("kit-in", house, of0).Code);
        Assert.Equal(0, _run.Run("kit-in", house, of0, "--yes").Code);
        Assert.Contains("hub-type\tHub\t1\t0\t1\t", _run.Run("kit", house).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void ATryNeedsNoLock()
    {
        var (house, file) = (Path.Combine(_folder, "held.trimout"), Path.Combine(_folder, "hub" + PartFolder.Ending));
        _run.Run("new", house);
        File.WriteAllText(file, "trimout-part: 1\nkind: hub-type\nname: Hub\ndevices: 7\n");
        using var held = TrimOut.HouseFile.HouseOnDisk.Open(house, TimeProvider.System);
        Assert.Equal("Hub\tDevices\t\t7\n", _run.Run("kit-in", house, file, "--try").Output);
    }

    [Fact]
    public void AKeptPartThatWasCheckedIsNotReplacedByOneThatWasNot()
    {
        var (house, kit) = (Path.Combine(_folder, "weak.trimout"), Path.Combine(_folder, "kit"));
        Directory.CreateDirectory(kit);
        var file = Path.Combine(kit, "hub-type-hub" + PartFolder.Ending);
        const string Head = "trimout-part: 1\nkind: hub-type\nname: Hub\n";
        _run.Run("new", house);
        File.WriteAllText(file, Head + "devices: 7\n");
        _run.Run("kit-in", house, file);
        File.WriteAllText(file, Head + "held-by: Ash\nheld-on: 2026-03-02\ndevices: 9\n");
        var refused = _run.Run("kit-out", house, "--kit", kit);
        Assert.NotEqual(0, refused.Code);
        Assert.Contains("--replace keeps these all the same", refused.Error, StringComparison.Ordinal);
        Assert.Contains("devices: 9", File.ReadAllText(file), StringComparison.Ordinal);
        Assert.Equal(0, _run.Run("kit-out", house, "--kit", kit, "--replace").Code);
        Assert.Contains("devices: 7", File.ReadAllText(file), StringComparison.Ordinal);
        Assert.Equal(9, int.Parse(PartFolder.OlderIn(kit).Single().Part.Value.Values.Single().Stored, System.Globalization.CultureInfo.InvariantCulture));
    }

    [Fact]
    public void ChecksThatWaitCountWhereTheyAreAskedFor()
    {
        var (house, windows) = (Path.Combine(_folder, "waits.trimout"), Path.Combine(_folder, "w.csv"));
        _run.Run("new", house);
        File.WriteAllText(windows, "Mark,Room\nW01,Den\n");
        Assert.Equal(0, _run.Run("import", house, windows).Code);
        Assert.Equal(0, _run.Run("check", house).Code);
        Assert.Equal(1, _run.Run("check", house, "--all-made").Code);
    }

    [Fact]
    public void PartsWhoseNamesMakeOneFileNameGetAFileEach()
    {
        var (house, kit) = (Path.Combine(_folder, "named.trimout"), Path.Combine(_folder, "kit"));
        _run.Run("new", house);
        string[] names = ["A/B", "A B", "A.B", "CON", "nul.", "..", "é", new string('ü', 40)];
        foreach (var name in names)
        {
            var file = Path.Combine(_folder, "one" + PartFolder.Ending);
            File.WriteAllText(file, $"trimout-part: 1\nkind: hub-type\nname: {name}\nheld-by: Ash\nheld-on: 2026-03-02\ndevices: 7\n");
            Assert.Equal(0, _run.Run("kit-in", house, file).Code);
        }
        Assert.Equal(0, _run.Run("kit-out", house, "--kit", kit).Code);
        var again = _run.Run("kit-out", house, "--kit", kit);
        Assert.DoesNotContain("Another text", again.Error, StringComparison.Ordinal);
        Assert.Equal(names.Order(StringComparer.Ordinal),
            PartFolder.In(kit).Select(p => p.Part.Value.Name).Order(StringComparer.Ordinal));
        Assert.Equal(names.Length, Directory.GetFiles(kit).Length);
    }

    [Fact]
    public void PartsWhoseNamesDifferOnlyByCaseAreBothKept()
    {
        var kept = new PartsKept(Path.Combine(_folder, "kit"));
        PartSheet Hub(string name) => PartText.Read($"trimout-part: 1\nkind: hub-type\nname: {name}\ndevices: 7\n").Value;
        Assert.Equal(["Hub", "HUB"], new[] { kept.Write(Hub("Hub")), kept.Write(Hub("HUB")) }.Select(f => PartFolder.Read(f).Value.Name));
    }

    [Fact]
    public void WhatNobodyReadIsNotKeptAndSaidSo()
    {
        var house = Path.Combine(_folder, "blank.trimout");
        _run.Run("new", house);
        var ended = _run.Run("kit-out", house, "--kit", Path.Combine(_folder, "kit"));
        Assert.Empty(ended.Output);
        Assert.Contains("Not kept, for no value is there: Roller, Cellular, ", ended.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void APartOfWhichOnlyItsSheetIsSaidIsKept()
    {
        var (house, kit) = (Path.Combine(_folder, "sheet.trimout"), Path.Combine(_folder, "kit-of-sheet"));
        _run.Run("new", house);
        Assert.Equal(0, _run.RunWith("Roller\tsheet\tRS-1\nRoller\tedition\t3\n", "set", house).Code);
        var ended = _run.Run("kit-out", house, "--kit", kit);
        Assert.Contains("Not kept, for no value is there: Cellular, ", ended.Error, StringComparison.Ordinal);
        Assert.Contains("edition: 3", File.ReadAllText(ended.Output.Trim()), StringComparison.Ordinal);
    }

    [Fact]
    public void WhatIsKeptWithoutACheckedValueIsSaid()
    {
        var (house, file) = (Path.Combine(_folder, "open.trimout"), Path.Combine(_folder, "hub" + PartFolder.Ending));
        _run.Run("new", house);
        File.WriteAllText(file, "trimout-part: 1\nkind: hub-type\nname: Attic hub\ndevices: 7\n");
        _run.Run("kit-in", house, file);
        var ended = _run.Run("kit-out", house, "--kit", Path.Combine(_folder, "kit"));
        Assert.Contains("Kept, though nobody checked a value of it: Attic hub.", ended.Error, StringComparison.Ordinal);
        Assert.Equal(0, ended.Code);
    }

    [Fact]
    public void APartThatTheHouseHasNotEndsAsAnUnknownNameDoes()
    {
        var ended = _run.Run("kit-out", Orchard, "--kit", Path.Combine(_folder, "kit"), "--part", "Nonsense");
        Assert.Equal(ExitCode.Usage, ended.Code);
        Assert.Contains("There is no part Nonsense. There are: ", ended.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(_folder, "kit")));
    }

    [Fact]
    public void TwoFilesOfOnePartAreNamedWithTheirEditionsAndBeginNoHouse()
    {
        foreach (var edition in new[] { "C", "D" })
        {
            File.WriteAllText(Path.Combine(_folder, $"{edition}{PartFolder.Ending}"),
                $"trimout-part: 1\nkind: hub-type\nname: Hub\nedition: rev {edition}\ndevices: 7\n");
        }
        var ended = _run.Run("new", Path.Combine(_folder, "twice"), "--kit", _folder);
        Assert.Equal(ExitCode.Usage, ended.Code);
        Assert.Contains("Two files are one hub type, Hub: C.part.txt (edition rev C) and D.part.txt (edition rev D).", ended.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(_folder, "twice.trimout")));
    }

    [Fact]
    public void WhatCountsAsCheckedIsSaidAndADayThatIsStillToComeCountsForNothing()
    {
        var (house, file) = (Path.Combine(_folder, "later.trimout"), Path.Combine(_folder, "hub" + PartFolder.Ending));
        _run.Run("new", house);
        File.WriteAllText(file, "trimout-part: 1\nkind: hub-type\nname: Attic hub\nheld-by: Ash\nheld-on: 2999-01-01\ndevices: 7\n");
        var ended = _run.Run("kit-in", house, file, "--try");
        Assert.DoesNotContain("counts as checked", ended.Error, StringComparison.Ordinal);
        Assert.Contains("The values of Attic hub count as not checked: its file says that they were checked on 2999-01-01, which is still to come.",
            ended.Error, StringComparison.Ordinal);
        File.WriteAllText(file, File.ReadAllText(file).Replace("2999", "2026", StringComparison.Ordinal));
        Assert.Contains("1 value counts as checked, by Ash on 2026-01-01: the file says so.", _run.Run("kit-in", house, file, "--try").Error,
            StringComparison.Ordinal);
        File.WriteAllText(file, File.ReadAllText(file).Replace("2026", "2999", StringComparison.Ordinal));
        Assert.Contains("which is still to come", _run.Run("new", Path.Combine(_folder, "from"), "--kit", _folder).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void AFindingThatRestsOnAValueThatNobodyCheckedSaysSo()
    {
        var (house, file) = (Path.Combine(_folder, "rests.trimout"), Path.Combine(_folder, "roller" + PartFolder.Ending));
        _run.Run("new", house);
        const string Text = "trimout-part: 1\nkind: covering-kind\nname: Roller\nheld-by: Ash\nheld-on: 2026-03-02\n";
        File.WriteAllText(file, Text + "? motor-volts: 12 V\n? least-volts: 13 V\n");
        _run.Run("kit-in", house, file);
        var open = _run.Run("check", house);
        Assert.Contains(", by values that nobody checked: ", open.Output, StringComparison.Ordinal);
        Assert.Contains("\"unchecked\": [", _run.Run("check", house, "--json").Output, StringComparison.Ordinal);
        File.WriteAllText(file, Text + "motor-volts: 12 V\nleast-volts: 13 V\n");
        _run.Run("kit-in", house, file);
        Assert.DoesNotContain("nobody checked", _run.Run("check", house).Output, StringComparison.Ordinal);
    }

    /// <summary>In the sample nobody read the sheet of the rollers: what passes by its values is a line of its own, and no pass.</summary>
    [Fact]
    public void WhatPassesByAValueThatNobodyCheckedIsNoPass()
    {
        var house = Path.Combine(Path.GetDirectoryName(Orchard)!, "ridge-house");
        var said = _run.Run("check", house).Output;
        Assert.Matches("(?m)^unread  W[0-9A-Z]+: passes by values that nobody checked: .*of Roller", said);
        Assert.Matches("[0-9]+ not checked, [0-9]+ pass by values that nobody checked, [0-9]+ fine", said);
        Assert.Contains("\"passedUnread\": [", _run.Run("check", house, "--json").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void AnotherTextOfAPartIsKeptAsItWas()
    {
        var kit = Path.Combine(_folder, "kit");
        _run.Run("kit-out", Orchard, "--kit", kit, "--part", "Hub");
        var file = Directory.GetFiles(kit).Single();
        File.AppendAllText(file, "# a remark of my own\n");
        _run.Run("kit-out", Orchard, "--kit", kit, "--part", "Hub");
        Assert.Contains("a remark of my own", File.ReadAllText(file), StringComparison.Ordinal);
        File.WriteAllText(file, File.ReadAllText(file).Replace("devices: ", "devices: 1", StringComparison.Ordinal));
        _run.Run("kit-out", Orchard, "--kit", kit, "--part", "Hub");
        Assert.Contains("a remark of my own", File.ReadAllText(file + ".older-1"), StringComparison.Ordinal);
    }

    [Fact]
    public void ANewHouseNamesEachFileOfItsKitThatCanNotBeReadAndBeginsWithTheOthers()
    {
        var kit = Path.Combine(_folder, "mixed");
        Directory.CreateDirectory(kit);
        string In(string name) => Path.Combine(kit, name + PartFolder.Ending);
        File.WriteAllText(In("bad"), "trimout-part: 1\nkind: hub-type\nname: H\ndevices: many\n");
        File.WriteAllText(In("newer"), "trimout-part: 2\nkind: hub-type\n");
        File.WriteAllText(In("large"), new string('#', (1 << 20) + 1));
        var none = _run.Run("new", Path.Combine(_folder, "none"), "--kit", kit);
        Assert.Equal(65, none.Code);
        Assert.False(File.Exists(Path.Combine(_folder, "none.trimout")));
        File.WriteAllText(In("good"), "trimout-part: 1\nkind: hub-type\nname: Cellar hub\ndevices: 9\n");
        var begun = _run.Run("new", Path.Combine(_folder, "begun"), "--kit", kit);
        Assert.Equal(2, begun.Code);
        foreach (var said in (string[])[none.Error, begun.Error])
        {
            Assert.Contains("bad.part.txt: Line 4: ", said, StringComparison.Ordinal);
            Assert.Contains("newer.part.txt: Line 1: the file is of a newer form (2) than this TrimOut reads (1).", said, StringComparison.Ordinal);
            Assert.Contains("large.part.txt is too large: more than 1 MiB.", said, StringComparison.Ordinal);
        }
        Assert.Matches(@"(?m)^hub-type\tCellar hub\t", _run.Run("kit", Path.Combine(_folder, "begun.trimout")).Output);
    }

    /// <summary>Two houses, one in inches and one in millimeters, keep the same parts in one folder: nobody's file is moved away for its units.</summary>
    [Fact]
    public void AKeptFileThatSaysTheSameInOtherUnitsStays()
    {
        var (inches, metric, kit) = (Path.Combine(_folder, "i.trimout"), Path.Combine(_folder, "m.trimout"), Path.Combine(_folder, "both"));
        _run.Run("new", inches);
        _run.Run("new", metric, "--units", "mm");
        var file = Path.Combine(_folder, "r" + PartFolder.Ending);
        File.WriteAllText(file, "trimout-part: 1\nkind: covering-kind\nname: Roller\nwidest: 96 in\n");
        Assert.Equal(0, _run.Run("kit-in", inches, file).Code);
        Assert.Equal(0, _run.Run("kit-out", inches, "--kit", kit, "--part", "Roller").Code);
        var kept = Directory.GetFiles(kit).Single();
        Assert.Contains("widest: 96\"\n", File.ReadAllText(kept), StringComparison.Ordinal);
        Assert.Equal(0, _run.Run("kit-in", metric, kept).Code);
        Assert.Equal(0, _run.Run("kit-out", metric, "--kit", kit, "--part", "Roller").Code);
        Assert.Equal(kept, Directory.GetFiles(kit).Single());
        Assert.Contains("widest: 96\"\n", File.ReadAllText(kept), StringComparison.Ordinal);
    }
}
