using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Decisions;

public class SetLineTests
{
    private readonly TestJob _job = new TestJob().Window("W01").Window("W02").Add(ItemKind.Panel, "P1").Add(ItemKind.Hub, "Hub").Add(ItemKind.Remote, "Wall")
        .Add(ItemKind.Box, "A").Add(ItemKind.Contact, "Ash Example").Do(j => AddItems.Preset(j.House.Remotes[0], "Evening"))
        .Do(j => AddItems.Visit(j.House, "Hang"));

    [Theory]
    [InlineData("W01", "rough-width", "45 1/2", "45 1/2\"")]
    [InlineData("w01", "Rough width", "45 1/2", "45 1/2\"")]
    [InlineData("W01", "Lead side", "left", "left")]
    [InlineData("W01", "Window: Note", "at the stair", "at the stair")]
    [InlineData("W01", "Unit: Note", "spare bracket", "spare bracket")]
    [InlineData("house", "Client", "Somebody", "Somebody")]
    [InlineData("Test house", "client", "Somebody", "Somebody")]
    [InlineData("Roller", "Motor volts", "12", "12 V")]
    [InlineData("covering kind Roller", "motor-volts", "12", "12 V")]
    [InlineData("P1", "Location", "Mechanical room", "Mechanical room")]
    [InlineData("panel P1", "location", "Mechanical room", "Mechanical room")]
    [InlineData("hub Hub", "location", "Hall", "Hall")]
    [InlineData("Wall", "Room", "Kitchen", "Kitchen")]
    [InlineData("Wall", "moves W02", "yes", "yes")]
    [InlineData("Evening", "position W01", "40", "40 %")]
    [InlineData("@Kitchen", "Floor", "Main", "Main")]
    [InlineData("room Kitchen", "floor", "Main", "Main")]
    [InlineData("box A", "Left in it", "90 ft", "90'-0\"")]
    [InlineData("Ash Example", "Telephone", "555 0101", "555 0101")]
    [InlineData("visit Hang", "Day", "2026-09-07", "2026-09-07")]
    [InlineData("Hang", "expects Ash Example", "yes", "yes")]
    public void AnythingIsNamedAsTheScreensNameIt(string about, string detail, string value, string shown)
    {
        var before = _job.Scribe.Log.Changes.Count;
        _job.Do(SetLine.Read(_job.House, $"{about}\t{detail}\t{value}"));
        Assert.Equal(before + 1, _job.Scribe.Log.Changes.Count);
        Assert.EndsWith($": {shown}", _job.Scribe.Log.Changes[^1].What, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("visit Hang\tDay\tfri")]
    [InlineData("visit Hang\tDay\t+2")]
    public void ADayIsSaidFromTodayWhereThatIsKnown(string line)
    {
        Assert.False(SetLine.Read(_job.House, line).Ok);
        _job.Do(SetLine.Read(_job.House, line, new DateOnly(2026, 11, 25)));
        Assert.Equal(new DateOnly(2026, 11, 27), _job.House.Visits.Single().On);
    }

    [Fact]
    public void EveryLabelOfEverySortOfItemIsTaken()
    {
        // What the line asks for is found, whatever becomes of the value.
        foreach (var item in _job.House.Items.Values.Where(i => i.Kind is not (ItemKind.Unit or ItemKind.Run or ItemKind.Leg)))
        {
            foreach (var fact in FactTable.Of(item.Kind).Where(f => !f.IsKeyed))
            {
                var name = item.Kind is ItemKind.House or ItemKind.Window ? _job.House.NameOf(item)
                    : $"{ItemsNamed.Word(item.Kind)} {_job.House.NameOf(item)}";
                Assert.DoesNotContain("There is no detail", SetLine.Read(_job.House, $"{name}\t{fact.Label}\t?").Reason ?? "", StringComparison.Ordinal);
                Assert.DoesNotContain("There is no window", SetLine.Read(_job.House, $"{name}\t{fact.Label}\t?").Reason ?? "", StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void ALegIsNamedByItsNumber()
    {
        _job.Legs("W01", ("20 ft", CablePlace.InWall), ("30 ft", CablePlace.InWall));
        _job.Do(SetLine.Read(_job.House, "W01\tLeg 2: Length\t31 ft"));
        Assert.Equal(Length.FromFeet(31), _job.Run("W01").Legs[1].Item.Get(LegFacts.Length));
        Assert.Contains("no leg 3", SetLine.Read(_job.House, "W01\tLeg 3: Length\t31 ft").Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("contact\tnew\tBo Example, supplier, 555 0103", "Bo Example")]
    [InlineData("visit\tnew\t2026-09-07 Pair @Ash Example", "Pair")]
    [InlineData("panel\tnew\tP2", "P2")]
    [InlineData("room\tnew\tDen/Upper", "Den")]
    [InlineData("covering kind\tnew\tWide roller", "Wide roller")]
    public void WhatHasANameIsAddedByIt(string line, string name)
    {
        _job.Do(SetLine.Read(_job.House, line));
        Assert.Equal(name, _job.House.NameOf(_job.House.Items.Values.MaxBy(i => i.Place)!));
    }

    [Theory]
    [InlineData("W09\tnote\tx", "There is no window W09")]
    [InlineData("P1\tcolour-of-cat\tx", "There is no detail called colour-of-cat of a panel. There are: name, type, location")]
    [InlineData("W01\tcolour-of-cat\tx", "trimout set --details lists all.")]
    [InlineData("Wall\tmoves Ash Example\tyes", "is no unit")]
    [InlineData("skylight\tnew\tx", "is nothing that is added")]
    [InlineData("W01 note x", "with a tab between")]
    public void WhatIsNotThereIsRefusedWithWhatIs(string line, string why) =>
        Assert.Contains(why, SetLine.Read(_job.House, line).Reason, StringComparison.Ordinal);

    /// <summary>On the screens it is asked about; a script is told which size comes first.</summary>
    [Theory]
    [InlineData("ordered-on\t2026-03-02", "W01, Ordered on: W01 has no order height yet, and an order goes out with both. Put the size first.")]
    [InlineData("Acknowledgement\tA-7", "W01, Acknowledgement: W01 has no order height yet, and an order goes out with both. Put the size first.")]
    public void AnOrderIsNotSaidToHaveGoneOutBeforeItsSizeIsThere(string line, string why)
    {
        _job.Do(SetLine.Read(_job.House, "W01\torder-width\t36"));
        Assert.Equal(why, SetLine.Read(_job.House, $"W01\t{line}").Reason);
        _job.Do(SetLine.Read(_job.House, "W01\torder-height\t60"));
        _job.Do(SetLine.Read(_job.House, $"W01\t{line}"));
        Assert.True(SetLine.Read(_job.House, $"W01\t{line.Split('\t')[0]}\t").Ok);
    }

    [Fact]
    public void ANameOfTwoSortsAsksWhich()
    {
        _job.Add(ItemKind.Remote, "P1");
        Assert.Equal("P1 is more than one thing: write panel P1 or remote P1.", SetLine.Read(_job.House, "P1\tname\tP2").Reason);
        _job.Do(SetLine.Read(_job.House, "panel P1\tname\tP2"));
        Assert.Equal("P2", _job.House.Panels[0].Name);
    }
}
