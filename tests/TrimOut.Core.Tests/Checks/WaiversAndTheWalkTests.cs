using CsCheck;
using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks;

/// <summary>Nothing that a waiver is held against depends on an order: not on that of the walk, nor on that in which things were added; nor on units.</summary>
public class WaiversAndTheWalkTests
{
    /// <summary>Neighbours are those who follow on each other: in another order others are.</summary>
    private const string OfNeighbours = "bars-not-level";

    public static TheoryData<string> Samples => [.. SampleHouse.Names];

    public static TheoryData<string> Ids => [.. AllChecks.All.Select(c => c.Info.Id)];

    [Theory]
    [MemberData(nameof(Samples))]
    public void InAnotherOrderAllWaiversOfASampleHold(string sample) => Hold(HouseLog.Of(SampleHouse.Changes(sample)).Value, 5);

    [Theory]
    [MemberData(nameof(Ids))]
    public void InAnotherOrderAllWaiversOfAnExampleHold(string id) => Hold(Example.Finding(AllChecks.Find(id)!).Play().Job.Scribe.Log, 2);

    [Fact]
    public void InAnotherOrderAllWaiversOfARandomHouseHold() => Gen.Select(RandomDeeds.Gen, RandomDeeds.Gen, RandomDeeds.Gen, Gen.Int).Sample((a, b, c, seed) =>
    {
        var log = Shared.Value;
        foreach (var deed in a.Concat(b).Concat(c))
            log = deed.DoneTo(log).LastOrDefault() ?? log;
        Hold(log, 2, seed);
    }, iter: 60, threads: 1);

    private static readonly Lazy<HouseLog> Shared = new(() => BigHouse.Of(12).Scribe.Log);

    private static void Hold(HouseLog log, int orders, int seed = 1)
    {
        var random = new Random(seed);
        var house = Waived(log.House);
        // What is removed has no waivers: it is left removed, or brought back.
        Assert.All(CheckReport.Of(house).Findings.Where(f => !f.Subject.Removed), f => Assert.False(f.Open));
        for (var n = 0; n < orders; n++)
        {
            Closed(Added(house, random));
            Closed(Walked(house, random));
            Closed(HouseLog.Preview(house, Units(house.DisplayUnits == DisplayUnits.Inches ? "millimetres" : "inches")), "step-off-units");
        }
    }

    private static void Closed(House house, string? besides = null)
    {
        var report = CheckReport.Of(house);
        // Which of two units of one position is the left one nobody knows: in another order the other one is.
        var doubtful = report.Findings.Where(f => f.Check.Id == "position-twice").Select(f => f.Subject.Id).ToHashSet();
        Assert.All(report.Findings.Where(f => !f.Subject.Removed && f.Check.Id != OfNeighbours && f.Check.Id != besides && !IsIn(f.Subject, doubtful, house)),
            f => Assert.False(f.Open, $"{f.Check.Id} of {house.NameOf(f.Subject)}: {f.Found.Message.In(house)}\n{f.Found.Message.Figures}"));
    }

    private static bool IsIn(Item item, HashSet<string> windows, House house) =>
        windows.Contains(item.Id) || item.Under is { } under && house.Find(under) is { } above && IsIn(above, windows, house);

    private static Draft Units(string units) => new Draft("units").PutStored(House.RootId, HouseFacts.Units.Name, units);

    private static House Waived(House house)
    {
        var draft = new Draft("all may stay");
        foreach (var finding in CheckReport.Of(house).Findings.Where(f => f.Open))
        {
            draft = draft.New(ItemKind.Waiver, finding.Subject.Id, out var id).Put(id, WaiverFacts.Check, finding.Check.Id)
                .Put(id, WaiverFacts.Figures, finding.Found.Message.In(house)).Put(id, WaiverFacts.Arguments, finding.Found.Message.Figures);
        }
        return HouseLog.Preview(house, draft);
    }

    private static House Walked(House house, Random random)
    {
        var draft = new Draft("another walk");
        foreach (var room in house.Rooms)
            draft = draft.Put(room.Id, RoomFacts.WalkingOrder, random.Next(1, 999));
        foreach (var window in house.Windows)
            draft = draft.Put(window.Id, WindowFacts.PlaceInRoom, random.Next(1, 99));
        return HouseLog.Preview(house, draft);
    }

    /// <summary>The house as it would be had everything been added in another order.</summary>
    private static House Added(House house, Random random)
    {
        var items = house.Items.Values.Skip(1).ToArray();
        random.Shuffle(items);
        return new House(new ItemTable(items.Prepend(house.Job).Select((i, at) => Item.Of(new Item(i.Id, i.Kind, i.Under, at), i.Fields))));
    }
}
