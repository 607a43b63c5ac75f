using CsCheck;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Decisions;

public class SetFactTests
{
    [Theory]
    [InlineData("40'", "is too long: the most that makes sense here is 360\"")]
    [InlineData("-36", "can't be negative")]
    [InlineData("3", "is too short: the least that makes sense here is 4\"")]
    [InlineData("0", "is too short")]
    [InlineData("wide", "is no length")]
    [InlineData("36-1", "may be a range or a fraction")]
    [InlineData("NaN", "is no length")]
    public void AWidthThatMakesNoSenseIsRefusedAndNothingChanges(string typed, string because)
    {
        var job = Jobs.Walked();
        var refused = SetFact.Typed(job.House, job.House.FindTag("W01")!.Item, WindowFacts.RoughWidth, typed);
        Assert.Contains(because, refused.Reason!, StringComparison.Ordinal);
        Assert.Equal("36\"", job.House.FindTag("W01")!.Show(WindowFacts.RoughWidth));
    }

    /// <summary>6 ft typed as 1968.503937 m has no such figures: what may be meant is said rounded.</summary>
    [Fact]
    public void WhatMayBeMeantIsSaidRounded()
    {
        var job = Jobs.Walked();
        var refused = CableTypeFacts.BoxLength.ReadTyped("200000 ft", job.House);
        Assert.DoesNotMatch("[0-9][.][0-9]{4}", refused.Reason!);
    }

    /// <summary>A number that is too small for millimeters is one of centimeters, of meters, or of inches; one of inches may be feet.</summary>
    [Theory]
    [InlineData(DisplayUnits.Millimetres, "91.5", "Did you mean 915 mm?")]
    [InlineData(DisplayUnits.Millimetres, "1.81", "Did you mean 1810 mm?")]
    [InlineData(DisplayUnits.Inches, "91.5 mm", "Did you mean 915 mm?")]
    [InlineData(DisplayUnits.Inches, "3", "Did you mean 36\"?")]
    public void AWidthThatIsTooSmallIsAskedAbout(DisplayUnits units, string typed, string meant)
    {
        var job = new TestJob(units).Window("W01");
        Assert.Contains(meant, SetFact.Typed(job.House, job.House.FindTag("W01")!.Item, WindowFacts.RoughWidth, typed).Reason!, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("38 ft", "the most that makes sense here is 48\". Did you mean 38\"?")]
    [InlineData("90 mm", "")]
    [InlineData("90", "the most that makes sense here is 48\". Did you mean 90 mm?")]
    [InlineData("900 ft", "the most that makes sense here is 48\".")]
    public void ADepthInAnotherUnitIsAskedAbout(string typed, string because)
    {
        var job = Jobs.Walked();
        var read = SetFact.Typed(job.House, job.House.FindTag("W01")!.Item, WindowFacts.Depth, typed);
        Assert.EndsWith(because, read.Reason ?? "", StringComparison.Ordinal);
        Assert.Equal(because.Length == 0, read.Ok);
    }

    [Fact]
    public void ATagThatIsTakenIsRefusedWhateverItsCase()
    {
        var job = Jobs.Walked().Window("W02", "Den");
        Assert.Equal("Tag W02 is taken by a window in Den. Every window has its own tag; W03 is free.",
            SetFact.Typed(job.House, job.House.FindTag("W01")!.Item, WindowFacts.Tag, "w02").Reason);
        Assert.True(SetFact.Typed(job.House, job.House.FindTag("W01")!.Item, WindowFacts.Tag, "w01").Ok);
    }

    [Theory]
    [InlineData(ItemKind.Panel)]
    [InlineData(ItemKind.Hub)]
    [InlineData(ItemKind.Remote)]
    [InlineData(ItemKind.HeadCover)]
    public void ANameThatAnotherOfItsSortHasIsRefusedWhereItIsChangedAsWhereItIsAdded(ItemKind kind)
    {
        var job = new TestJob().Add(kind, "North one").Add(kind, "South one");
        Result<Core.History.Draft> Call(string name) => SetFact.Typed(job.House, job.House.ItemsOf(kind).First(i => job.House.NameOf(i) == "South one"),
            FactTable.Find(kind, "name")!, name);
        Assert.EndsWith(" north  ONE already.", Call("north  ONE").Reason, StringComparison.Ordinal);
        Assert.True(Call("south ONE").Ok);
        Assert.True(Call("West one").Ok);
    }

    [Fact]
    public void AWindowKeepsATag()
    {
        var job = Jobs.Walked();
        Assert.Equal("A window keeps a tag. Type another one.", SetFact.Typed(job.House, job.House.FindTag("W01")!.Item, WindowFacts.Tag, " ").Reason);
    }

    [Fact]
    public void ARoomNameThatIsTakenIsRefused()
    {
        var job = new TestJob().Room("Den").Room("Hall");
        Assert.StartsWith("There is a room Den already.", SetFact.Typed(job.House, job.House.Rooms[1].Item, RoomFacts.Name, "den").Reason,
            StringComparison.Ordinal);
    }

    [Fact]
    public void AFactOfAnotherItemIsRefused()
    {
        var job = Jobs.Walked();
        Assert.EndsWith("is not a detail of this item.", SetFact.Typed(job.House, job.Unit("W01").Item, WindowFacts.RoughWidth, "36").Reason,
            StringComparison.Ordinal);
    }

    [Fact]
    public void AChoiceIsNamedByItsFirstLettersOrRefusedWithTheList()
    {
        var job = Jobs.Walked().Say("W01", UnitFacts.LeadSide, "r");
        Assert.Equal(Side.Right, job.Unit("W01").LeadSide);
        Assert.Equal("\"middle\" is none of: left, right.", SetFact.Typed(job.House, job.Unit("W01").Item, UnitFacts.LeadSide, "middle").Reason);
    }

    [Fact]
    public void AThingThatIsNotInTheHouseIsRefusedWithWhatThereIs()
    {
        var job = Jobs.Walked();
        Assert.Equal("\"Shutter\" is not in this house. There are: Roller, Cellular, Wood blind.",
            SetFact.Typed(job.House, job.Unit("W01").Item, UnitFacts.Kind, "Shutter").Reason);
        Assert.Equal("This house has no panel yet. Add one first.", SetFact.Typed(job.House, job.Run("W01").Item, RunFacts.Panel, "P1").Reason);
    }

    [Fact]
    public void AReadingKeepsTheMeterInUse()
    {
        var job = Jobs.Walked().SayOf("", HouseFacts.Meter, "red meter").Say("W01", RunFacts.FirstLoop, "0.6");
        Assert.Equal("red meter", job.Run("W01").Item.Latest(Companion.Meter("first-loop"))!.Stored);
    }

    [Fact]
    public void ATextWithControlCharactersIsCleaned()
    {
        var job = Jobs.Walked().Say("W01", UnitFacts.Note, "one\ttwo\r\nthree\u0007");
        Assert.Equal("one two three", job.Unit("W01").Show(UnitFacts.Note).TrimEnd());
    }

    [Fact]
    public void NothingThatIsTypedIntoAnyFactMakesItThrow()
    {
        var job = Jobs.Roughed().WithPanel().Add(ItemKind.Hub, "Hub 1").Add(ItemKind.Remote, "R1");
        var items = job.House.Items.Values.GroupBy(i => i.Kind).Select(g => g.First()).ToList();
        Gen.Select(Gen.Int[0, items.Count - 1], Gen.Int[0, 99], Gen.String[Gen.Char["0123456789 /-'\".,mcftinNa½yes:%\u0007é"], 0, 12])
            .Sample((at, fact, typed) =>
        {
            var facts = FactTable.Of(items[at].Kind);
            _ = SetFact.Typed(job.House, items[at], facts[fact % facts.Count], typed, "done");
        });
    }
}
