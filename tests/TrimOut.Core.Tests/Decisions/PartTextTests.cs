using System.Collections.Immutable;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Decisions;

public class PartTextTests
{
    private const string Panel = "trimout-part: 1\nkind: panel-type\nname: Panel\nsheet: Sheet of the panel\nedition: B\nheld-by: Ash\nheld-on: 2026-03-02\n"
        + "held-sheet: Sheet of the panel\nheld-edition: B\n\noutputs: 7\n? supply: 21 V\n";

    [Fact]
    public void APartReadsAsItWasWritten() => Assert.All(new TestJob().House.Items.Values.Where(i => FactTable.IsKit(i.Kind)), item =>
    {
        var house = new TestJob().House;
        var part = PartSheet.Of(house, house.Find(item.Id)!);
        var read = PartText.Read(PartText.Write(part)).Value;
        Assert.Equal((part.Kind, part.Name), (read.Kind, read.Name));
        Assert.Equal(part.Values.Select(v => (v.Fact.Name, v.Stored, v.Held)), read.Values.Select(v => (v.Fact.Name, v.Stored, v.Held)));
        Assert.Equal(part.About, read.About);
    });

    [Fact]
    public void AValueThatNobodyHeldStaysOneThatNobodyHeld()
    {
        var part = PartText.Read(Panel).Value;
        Assert.Equal(["outputs", "? supply"], part.Values.Select(v => v.Held ? v.Fact.Name : "? " + v.Fact.Name));
        var job = BlankHouse.With();
        job.Do(TakePart.Into(job.House, part));
        Assert.Equal(PanelTypeFacts.Supply, Assert.Single(SheetValues.NotHeldIn(job.Part(ItemKind.PanelType, "Panel"))));
        Assert.Single(job.House.ItemsOf(ItemKind.PanelType));
    }

    [Theory]
    [InlineData("kind: panel-type", "Line 1")]
    [InlineData("trimout-part: 1\nkind: window", "Line 2")]
    [InlineData("trimout-part: 1\nkind: panel-type\nname: P\noutputs: many", "Line 4")]
    [InlineData("trimout-part: 1\nkind: panel-type\nname: P\ntube: 1 in", "Line 4")]
    [InlineData("trimout-part: 1\nkind: covering-kind\nname: K\ntube: 40", "no unit")]
    [InlineData("trimout-part: 1\nkind: hub-type\nname: H\ndevices: 4\ndevices: 5", "twice")]
    [InlineData("trimout-part: 1\nkind: hub-type\ndevices: 4", "no name")]
    [InlineData("trimout-part: 1\nkind: hub-type\nname: H\nkind: hub-type\ndevices: 4", "Line 4: kind stands there twice")]
    [InlineData("trimout-part: 1\nkind: panel-type\nname: P\nkind: hub-type\ndevices: 4", "Line 4: kind stands there twice")]
    [InlineData("trimout-part: 1\nkind: hub-type\nname: H\nname: I", "Line 4: name stands there twice")]
    [InlineData("trimout-part: 1\nkind: hub-type\nname: H\nheld-by: Ash\nheld-by: Bo", "Line 5: held-by stands there twice")]
    public void WhatCanNotBeReadIsRefusedByItsLine(string text, string said) => Assert.Contains(said, PartText.Read(text).Reason!, StringComparison.Ordinal);

    [Theory]
    [InlineData("")]
    [InlineData("held-by: Ash\n")]
    [InlineData("held-on: 2026-03-02\n")]
    public void AFileThatDoesNotSayWhoHeldItAndWhenHoldsNothing(string about) => Assert.DoesNotContain(
        PartText.Read($"trimout-part: 1\nkind: panel-type\nname: P\n{about}\noutputs: 7\n").Value.Values, v => v.Held);

    /// <summary>Somebody opened the file and wrote the edition of a newer sheet into it: nobody held the values against that one.</summary>
    [Fact]
    public void AnEditionThatIsChangedByHandLeavesEveryValueUnchecked()
    {
        var part = PartText.Read(Panel).Value;
        var file = PartText.Write(part);
        Assert.Equal(["outputs"], PartText.Read(file).Value.Values.Where(v => v.Held).Select(v => v.Fact.Name));
        var other = PartText.Read(file.Replace("\nedition: B\n", "\nedition: C\n", StringComparison.Ordinal)).Value;
        Assert.Equal(("C", 2, 0), (other.About[AboutSheet.Edition], other.Values.Length, other.Values.Count(v => v.Held)));
        var twice = PartText.Read(file.Replace("held-on", "held-edition: B\nheld-on", StringComparison.Ordinal));
        Assert.Contains("twice", twice.Reason!, StringComparison.Ordinal);
    }

    [Fact]
    public void WhatIsNotUtf8IsRefusedByItsLine()
    {
        Assert.StartsWith("Line 4 is not UTF-8. ", PartText.Read([.. "trimout-part: 1\nkind: hub-type\n# a remark: é\nname: "u8, 0xE9, .. "\n"u8]).Reason!,
            StringComparison.Ordinal);
        Assert.Equal("Hub é", PartText.Read([0xEF, 0xBB, 0xBF, .. "trimout-part: 1\r\nkind: hub-type\r\nname: Hub é"u8]).Value.Name);
    }

    [Fact]
    public void WhoeverHasALongNameIsKeptAsFarAsTheSheetHasRoom()
    {
        var job = BlankHouse.With();
        var scribe = new Scribe(new MemoryStore("laptop", job.Scribe.Log.Changes), TimeProvider.System, new string('x', 60));
        scribe.Record(KitCheck.ReadOff(scribe.House, job.Part(ItemKind.HubType, "Hub"), HubTypeFacts.Devices, "21").Value);
        var read = PartText.Read(PartText.Write(PartSheet.Of(scribe.House, scribe.House.ItemsOf(ItemKind.HubType).Single())));
        Assert.Equal(new string('x', 40), read.Value.About[AboutSheet.HeldBy]);
    }

    [Fact]
    public void AWaivedFindingWhoseFiguresAPartChangesIsSaidToOpenAgain()
    {
        var job = new TestJob().Add(ItemKind.Panel, "A").Window("W01").Say("W01", UnitFacts.Power, "panel").Say("W01", RunFacts.Panel, "A")
            .Say("W01", RunFacts.Output, "12");
        job.Do(PunchList.Waive(job.Report.Findings.Single(f => f.Check.Id == "output-past-panel"), job.House, "it has a second row", "A"));
        var type = job.House.ItemsOf(ItemKind.PanelType).Single();
        var newer = PartText.Read(PartText.Write(PartSheet.Of(job.House, type)).Replace("outputs: 10", "outputs: 8", StringComparison.Ordinal)).Value;
        var effect = TakePart.Effect(job.Report, TakePart.Into(job.House, newer).Value);
        Assert.Equal("output-past-panel", Assert.Single(effect.Reopen).Check.Id);
        Assert.Equal("0 findings come, 1 waived one opens again, 0 go.", effect.ToString());
    }

    /// <summary>What goes by a value that nobody checked is no pass, and says by which; what was checked takes it away for good.</summary>
    [Theory]
    [InlineData("? ", "Then no longer found\u00A0?",
        " It passes only by a value that nobody checked: Outputs of Invented supply.", ", 1 only by values that nobody checked.")]
    [InlineData("", "Then no longer found", "", ".")]
    public void AFindingThatGoesSaysWhetherItGoesByAValueThatNobodyChecked(string mark, string becomes, string besides, string counted)
    {
        var job = new TestJob().Add(ItemKind.Panel, "A").Window("W01").Say("W01", UnitFacts.Power, "panel").Say("W01", RunFacts.Panel, "A")
            .Say("W01", RunFacts.Output, "12");
        var file = PartText.Read("trimout-part: 1\nkind: panel-type\nname: Invented supply\nheld-by: Ash\nheld-on: 2026-03-02\n"
            + $"{mark}outputs: 14\n").Value;
        var effect = TakePart.Effect(job.Report, TakePart.Into(job.House, file).Value);
        var gone = effect.Told.Single(t => t.Finding.Check.Id == "output-past-panel");
        Assert.Equal((becomes, $"W01: {job.Report.Said(gone.Finding)}{besides}"), (gone.Becomes, gone.Said));
        Assert.EndsWith($"1 goes{counted}", effect.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void TwoFilesOfOnePartBeginNoHouse() => Assert.Equal("Two files of the kit are one panel type, Panel. Move one of them elsewhere.",
        NewHouse.Begin("Twice", DisplayUnits.Inches,
            [PartText.Read(Panel).Value, PartText.Read(Panel.Replace("name: Panel", "name: PANEL", StringComparison.Ordinal)).Value]).Reason);

    [Fact]
    public void AnEditionThatWasMistypedKeepsWhatWasCheckedAndANewOneDoesNot()
    {
        var (kind, edition) = (ItemKind.PanelType, AboutSheet.Of(ItemKind.PanelType, AboutSheet.Edition));
        var job = new TestJob();
        Item Panel() => job.House.ItemsOf(kind).Single();
        job.Do(SetFact.Typed(job.House, Panel(), edition, "A sheet")).Do(j => KitCheck.All(j.House, Panel()));
        var values = SheetValues.Of(kind).Count(f => SheetMark.Holds(Panel(), f));
        Assert.Equal(values, KitCheck.WaitFor(job.House, Panel(), edition, "2025-B").Count);
        Assert.Empty(KitCheck.WaitFor(job.House, Panel(), edition, "a SHEET"));
        Assert.Empty(KitCheck.WaitFor(job.House, Panel(), PanelTypeFacts.InputVolts, "2025-B"));
        job.Do(KitCheck.SameSheet(job.House, Panel(), edition, "2025-B"));
        Assert.Empty(SheetValues.NotHeldIn(Panel()));
        Assert.Equal("2025-B", Panel().Latest(edition)?.Stored);
        job.Do(SetFact.Typed(job.House, Panel(), edition, "2026-A"));
        Assert.Equal(values, SheetValues.NotHeldIn(Panel()).Count());
        Assert.All(SheetValues.NotHeldIn(Panel()), f => Assert.Equal("2025-B", SheetMark.OlderEdition(Panel(), f)));
    }

    [Fact]
    public void AnotherSheetWaitsForEachValueAndAMistypedNameForNone()
    {
        var (kind, sheet) = (ItemKind.PanelType, AboutSheet.Of(ItemKind.PanelType, AboutSheet.Sheet));
        var job = new TestJob();
        Item Panel() => job.House.ItemsOf(kind).Single();
        job.Do(KitCheck.All(job.House, Panel()));
        var values = SheetValues.Of(kind).Count(f => SheetMark.Holds(Panel(), f));
        // Nobody knows yet whether it was this one.
        Assert.Equal(values, KitCheck.WaitFor(job.House, Panel(), sheet, "Sheet 4").Count);
        job.Do(KitCheck.SameSheet(job.House, Panel(), sheet, "Sheet 4"));
        Assert.Equal(values, KitCheck.WaitFor(job.House, Panel(), sheet, "Sheet 5").Count);
        job.Do(KitCheck.SameSheet(job.House, Panel(), sheet, "Sheet 4b")).Do(SetFact.Typed(job.House, Panel(), sheet, "SHEET 4B"));
        Assert.Equal("SHEET 4B", Panel().Latest(sheet)?.Stored);
        Assert.Empty(SheetValues.NotHeldIn(Panel()));
        job.Do(SetFact.Typed(job.House, Panel(), sheet, "Sheet 5"));
        Assert.EndsWith($"{values} values wait to be checked against it", job.Scribe.Log.Changes[^1].What, StringComparison.Ordinal);
        Assert.Equal(values, SheetValues.NotHeldIn(Panel()).Count());
    }

    /// <summary>What was checked while no sheet and no edition was named was checked against an unknown one: who names it says whether it was that.</summary>
    [Theory]
    [InlineData(AboutSheet.Sheet)]
    [InlineData(AboutSheet.Edition)]
    public void ASheetOrEditionThatIsNamedAfterwardsWasNotWhatTheValuesWereCheckedAgainstUnlessItIsSaid(string name)
    {
        var (kind, said) = (ItemKind.PanelType, AboutSheet.Of(ItemKind.PanelType, name));
        foreach (var isSame in new[] { false, true })
        {
            var job = new TestJob();
            Item Panel() => job.House.ItemsOf(kind).Single();
            job.Do(KitCheck.All(job.House, Panel()));
            var values = SheetValues.Of(kind).Count(f => SheetMark.Holds(Panel(), f));
            job.Do(isSame ? KitCheck.SameSheet(job.House, Panel(), said, "2026-A") : SetFact.Typed(job.House, Panel(), said, "2026-A"));
            Assert.Equal(isSame ? 0 : values, SheetValues.NotHeldIn(Panel()).Count());
            Assert.Equal("2026-A", Panel().Latest(name)?.Stored);
            Assert.All(SheetValues.Of(kind), f => Assert.False(SheetMark.IsChangedSince(Panel(), f)));
        }
    }

    /// <summary>An edition that is taken away and named again is the one that the marks note; another one is not.</summary>
    [Theory]
    [InlineData("a", 0)]
    [InlineData("B", 1)]
    public void AMarkThatNotesAnEditionKnowsItAgain(string edition, int waits)
    {
        var (kind, said) = (ItemKind.HubType, AboutSheet.Of(ItemKind.HubType, AboutSheet.Edition));
        var job = BlankHouse.With();
        Item Hub() => job.Part(kind, "Hub");
        job.Do(SetFact.Typed(job.House, Hub(), said, "A")).Do(j => KitCheck.ReadOff(j.House, Hub(), HubTypeFacts.Devices, "21"))
            .Do(j => SetFact.Typed(j.House, Hub(), said, "")).Do(j => SetFact.Typed(j.House, Hub(), said, edition));
        Assert.Equal(waits, SheetValues.NotHeldIn(Hub()).Count());
    }

    /// <summary>A file that names no edition, or no sheet, does not know what its values were checked against: nothing of it is checked against ours.</summary>
    [Theory]
    [InlineData(AboutSheet.Sheet)]
    [InlineData(AboutSheet.Edition)]
    public void AFileThatNamesNoSheetOrEditionBringsNoCheckedValueToAPartThatHasOne(string name)
    {
        var job = HeldPanel();
        var text = PartText.Write(PartSheet.Of(job.House, job.Panel())).Replace("outputs: 10", "outputs: 8", StringComparison.Ordinal)
            .Replace("held-by: ", "held-by: Pat ", StringComparison.Ordinal);
        var part = PartText.Read(string.Join('\n', text.Split('\n').Where(l => !l.StartsWith($"{name}:", StringComparison.Ordinal)
            && !l.StartsWith($"held-{name}:", StringComparison.Ordinal)))).Value;
        Assert.Contains(part.Values, v => v.Held);
        Assert.EndsWith($"against no known {name}. Check again.", part.Beside(job.House).WhyNoneCounts, StringComparison.Ordinal);
        Assert.Equal(PanelTypeFacts.Outputs, Assert.Single(TakePart.LosesChecked(job.House, part)));
        Assert.Empty(TakePart.AboutChanges(job.House, part));
        job.Do(TakePart.Into(job.House, part));
        // What the house itself checked, and the file does not change, stays checked.
        Assert.Equal(PanelTypeFacts.Outputs, Assert.Single(SheetValues.NotHeldIn(job.Panel())));
        Assert.Null(job.Panel().Latest(AboutSheet.HeldBy)?.Stored);
        // A part that names none either takes it as it is.
        var other = new TestJob();
        other.Do(TakePart.Into(other.House, part with { About = part.About.Remove(AboutSheet.Sheet).Remove(AboutSheet.Edition) }));
        Assert.Empty(SheetValues.NotHeldIn(other.Panel()));
    }

    [Theory]
    [InlineData("sheet: Sheet 4", "sheet: Sheet 5", "held-sheet: Sheet 4, and sheet: Sheet 5")]
    [InlineData("edition: A", "edition: B", "held-edition: A, and edition: B")]
    [InlineData("sheet: ", "sheet: ", null)]
    public void AFileWhoseSheetOrEditionWasChangedByHandHasNoCheckedValue(string was, string becomes, string? other)
    {
        var job = new TestJob();
        Item Panel() => job.House.ItemsOf(ItemKind.PanelType).Single();
        foreach (var (name, said) in new[] { (AboutSheet.Sheet, "Sheet 4"), (AboutSheet.Edition, "A") })
            job.Do(SetFact.Typed(job.House, Panel(), AboutSheet.Of(ItemKind.PanelType, name), said));
        job.Do(KitCheck.All(job.House, Panel()));
        var part = PartText.Read(PartText.Write(PartSheet.Of(job.House, Panel())).Replace($"\n{was}", $"\n{becomes}", StringComparison.Ordinal)).Value;
        Assert.Equal(other, part.HeldAgainstOther);
        Assert.Equal(other is null, part.Values.Any(v => v.Held));
        Assert.Equal(other is null, TakePart.LosesChecked(job.House, part).IsEmpty);
    }

    /// <summary>Whoever takes the line out by hand says of no edition that the values were held against it: it is no way round the sheet.</summary>
    [Theory]
    [InlineData("edition")]
    [InlineData("sheet")]
    public void AFileThatNamesAnEditionAndNotTheOneItsValuesWereHeldAgainstHasNoCheckedValue(string name)
    {
        var job = new TestJob();
        Item Panel() => job.House.ItemsOf(ItemKind.PanelType).Single();
        foreach (var (of, said) in new[] { (AboutSheet.Sheet, "Sheet 4"), (AboutSheet.Edition, "A") })
            job.Do(SetFact.Typed(job.House, Panel(), AboutSheet.Of(ItemKind.PanelType, of), said));
        job.Do(KitCheck.All(job.House, Panel()));
        var text = PartText.Write(PartSheet.Of(job.House, Panel()));
        Assert.Null(PartText.Read(text).Value.HeldAgainstUnknown);
        var part = PartText.Read(string.Join('\n', text.Split('\n').Where(l => !l.StartsWith($"held-{name}:", StringComparison.Ordinal)))).Value;
        Assert.Equal(name, part.HeldAgainstUnknown);
        Assert.DoesNotContain(part.Values, v => v.Held);
    }

    [Fact]
    public void ANewerEditionShowsWhatItChangesAndWhatTheChecksThenSay()
    {
        var job = new TestJob().Add(ItemKind.Panel, "A").Window("W01").Say("W01", UnitFacts.Power, "panel").Say("W01", RunFacts.Panel, "A")
            .Say("W01", RunFacts.Output, "9");
        var type = job.House.ItemsOf(ItemKind.PanelType).Single();
        var newer = PartText.Read(PartText.Write(PartSheet.Of(job.House, type)).Replace("outputs: 10", "outputs: 8", StringComparison.Ordinal)).Value;
        var change = Assert.Single(TakePart.Changes(job.House, newer));
        Assert.Equal((PanelTypeFacts.Outputs, "10", "8"), (change.Fact, change.Was, change.Becomes));
        var effect = TakePart.Effect(job.Report, TakePart.Into(job.House, newer).Value);
        Assert.Equal("output-past-panel", Assert.Single(effect.Come).Check.Id);
        // Nothing was taken yet, and a blank of the file takes nothing away.
        Assert.Equal("10", job.House.ItemsOf(ItemKind.PanelType).Single().Latest(PanelTypeFacts.Outputs)!.Stored);
        Assert.Equal(type.Id, newer.In(job.House)!.Id);
    }

    [Fact]
    public void AValueThatANewerEditionLacksIsSaidAndStaysNotChecked()
    {
        var job = HeldPanel();
        var text = PartText.Write(PartSheet.Of(job.House, job.Panel()));
        var newer = PartText.Read(text.Replace("edition: 1", "edition: 2", StringComparison.Ordinal)
            .Replace("total-current: 15\n", "", StringComparison.Ordinal)).Value;
        Assert.Contains(TakePart.AboutChanges(job.House, newer), c => (c.Fact.Label, c.Was, c.Becomes) == ("Edition", "1", "2"));
        Assert.Equal(PanelTypeFacts.TotalCurrent, Assert.Single(TakePart.NotInEdition(job.House, newer)));
        job.Do(TakePart.Into(job.House, newer));
        Assert.Equal("15", job.Panel().Latest(PanelTypeFacts.TotalCurrent)!.Stored);
        Assert.Equal(PanelTypeFacts.TotalCurrent, Assert.Single(SheetValues.NotHeldIn(job.Panel())));
        Assert.Contains("? total-current: 15", PartText.Write(PartSheet.Of(job.House, job.Panel())), StringComparison.Ordinal);
        // The same edition that lacks a value is only a file with a gap.
        Assert.Empty(TakePart.NotInEdition(job.House, newer));
    }

    [Fact]
    public void OnlyValuesThatChangeOrLoseTheirCheckAreSaidToBeTakenUnchecked()
    {
        var job = HeldPanel();
        var text = PartText.Write(PartSheet.Of(job.House, job.Panel()));
        var nobody = string.Join('\n', text.Split('\n').Where(l => !l.StartsWith("held-", StringComparison.Ordinal)));
        var other = PartText.Read(nobody.Replace("outputs: 10", "outputs: 8", StringComparison.Ordinal)).Value;
        Assert.Equal(PanelTypeFacts.Outputs, Assert.Single(TakePart.TakenUnchecked(job.House, other)));
        job.Do(TakePart.Into(job.House, other));
        Assert.Equal(PanelTypeFacts.Outputs, Assert.Single(SheetValues.NotHeldIn(job.Panel())));
        // Of another edition nothing is known to be checked that its file does not say.
        var edition = PartText.Read(nobody.Replace("edition: 1", "edition: 2", StringComparison.Ordinal)).Value;
        var taken = TakePart.TakenUnchecked(job.House, edition);
        job.Do(TakePart.Into(job.House, edition));
        Assert.Equal<Fact>(SheetValues.NotHeldIn(job.Panel()), taken);
    }

    [Fact]
    public void PartsOfABlankKitThatAKeptOneTakesThePlaceOfAreNamed()
    {
        Assert.Equal("Panel", Assert.Single(
            NewHouse.LeftOut(DisplayUnits.Inches, [PartText.Read(Panel.Replace("name: Panel", "name: Other", StringComparison.Ordinal)).Value])));
        Assert.Empty(NewHouse.LeftOut(DisplayUnits.Inches, [PartText.Read(Panel).Value]));
        Assert.Empty(NewHouse.LeftOut(DisplayUnits.Inches, []));
    }

    private static TestJob HeldPanel()
    {
        var job = new TestJob();
        job.SayOf("Invented supply", AboutSheet.Of(ItemKind.PanelType, AboutSheet.Sheet), "Panel sheet")
            .SayOf("Invented supply", AboutSheet.Of(ItemKind.PanelType, AboutSheet.Edition), "1");
        return job.Do(KitCheck.All(job.House, job.Panel()));
    }

    [Fact]
    public void AHouseThatBeginsWithAKeptPartHasBlanksOfTheOtherSorts()
    {
        var job = new TestJob(store: new MemoryStore("laptop", Begun(PartText.Read(Panel).Value)));
        Assert.Equal("7", Assert.Single(job.House.ItemsOf(ItemKind.PanelType)).Latest(PanelTypeFacts.Outputs)!.Stored);
        Assert.NotEmpty(SheetValues.BlankIn(job.House.ItemsOf(ItemKind.HubType).Single()));
    }

    [Fact]
    public void AHouseThatBeginsWithAMakersHeadCoverCanStillSayNone()
    {
        var job = new TestJob(store: new MemoryStore("laptop", Begun(Cover("Fascia"))));
        Assert.Equal(["Fascia", "None"], job.House.ItemsOf(ItemKind.HeadCover).Select(job.House.NameOf).Order());
        Assert.Empty(NewHouse.LeftOut(DisplayUnits.Inches, [Cover("Fascia"), Cover("Valance")]));
        Assert.Single(new TestJob(store: new MemoryStore("laptop", Begun(Cover("none")))).House.ItemsOf(ItemKind.HeadCover));
    }

    private static PartSheet Cover(string name) => PartText.Read($"trimout-part: 1\nkind: head-cover\nname: {name}\n").Value;

    private static ImmutableList<Change> Begun(PartSheet part)
    {
        var scribe = new Scribe(new MemoryStore(), TimeProvider.System, "Ash");
        Assert.True(NewHouse.Begin("Kept", DisplayUnits.Inches, [part]).Then(scribe.Record).Ok);
        return scribe.Log.Changes;
    }

    [Fact]
    public void AFileOfANewerFormSaysSo() => Assert.Equal(
        "Line 1: the file is of a newer form (2) than this TrimOut reads (1). Take it with a newer TrimOut.",
        PartText.Read("trimout-part: 2\nkind: hub").Reason);

    /// <summary>
    /// Sixty-fourths, thousandths, millimeters and a length that neither holds: each goes out and comes in as it is, in a house of either units.
    /// </summary>
    [Theory]
    [InlineData(DisplayUnits.Inches, "96\"", "widest: 96\"")]
    [InlineData(DisplayUnits.Inches, "45 33/64\"", "widest: 45 33/64\"")]
    [InlineData(DisplayUnits.Inches, "45.187\"", "widest: 45.187\"")]
    [InlineData(DisplayUnits.Inches, "1156 mm", "widest: 1156 mm")]
    [InlineData(DisplayUnits.Inches, "1156.123456 mm", "widest: 1156.123456 mm")]
    [InlineData(DisplayUnits.Millimetres, "96\"", "widest: 2438.4 mm")]
    [InlineData(DisplayUnits.Millimetres, "45 33/64\"", "widest: 1156.096875 mm")]
    [InlineData(DisplayUnits.Millimetres, "1156 mm", "widest: 1156 mm")]
    public void ALengthIsWrittenInTheUnitsOfItsHouseAndReadsBackToTheSame(DisplayUnits units, string typed, string line)
    {
        var job = new TestJob(units).SayOf("Roller", CoveringKindFacts.Widest, typed);
        var part = PartSheet.Of(job.House, job.House.ItemsOf(ItemKind.CoveringKind).First());
        var text = PartText.Write(part);
        Assert.Contains($"{line}\n", text, StringComparison.Ordinal);
        foreach (var other in Enum.GetValues<DisplayUnits>())
        {
            var next = new TestJob(other);
            next.Do(TakePart.Into(next.House, PartText.Read(text).Value));
            Assert.Equal(Stored(job), Stored(next));
            // And back, out of a house of other units.
            var back = PartText.Read(PartText.Write(PartSheet.Of(next.House, next.House.ItemsOf(ItemKind.CoveringKind).First()))).Value;
            Assert.Empty(TakePart.Changes(job.House, back));
        }

        string? Stored(TestJob of) => of.House.ItemsOf(ItemKind.CoveringKind).First().Latest(CoveringKindFacts.Widest)?.Stored;
    }

    /// <summary>Every length of every part, in a hundred sizes that were rolled in nanometers.</summary>
    [Fact]
    public void NoLengthOfAnyPartIsChangedOnItsWayOutAndIn()
    {
        var random = new Random(15);
        foreach (var units in Enum.GetValues<DisplayUnits>())
        {
            foreach (var fact in FactTable.All.OfType<Fact<Length>>().Where(f => FactTable.IsKit(f.Subject) && SheetValues.Of(f.Subject).Contains(f)))
            {
                for (var n = 0; n < 100; n++)
                {
                    var stored = fact.Write(Length.FromNanometres(random.NextInt64(1, 2_000_000_000)));
                    if (!fact.ReadTyped(stored, House.Empty).Ok)
                        continue;
                    var part = new PartSheet(fact.Subject, "P", System.Collections.Immutable.ImmutableSortedDictionary<string, string>.Empty,
                        [new SheetValue(fact, stored, false)])
                    { WrittenIn = units };
                    Assert.Equal(stored, PartText.Read(PartText.Write(part)).Value.Values.Single().Stored);
                }
            }
        }
    }
}
