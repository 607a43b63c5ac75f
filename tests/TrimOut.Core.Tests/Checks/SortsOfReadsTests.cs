using System.Globalization;
using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Reads;
using TrimOut.Core.Wording;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks;

/// <summary>Every way of reading a house is noted: a check that reads in that way alone is judged again when it must be, and is out of date once its
/// noting is taken out.</summary>
public class SortsOfReadsTests
{
    private static readonly Dictionary<ReadSort, (Func<House, object?> Read, Action<TestJob> Change)> Cases = new()
    {
        [ReadSort.Field] = (h => h.Name, job => job.SayOf("", HouseFacts.Name, "Another house")),
        [ReadSort.AllOfAFact] = (h => h.State.Items.Values.Single(i => i.Kind == ItemKind.Remote).All(RemoteFacts.Moves).Count(),
            job => job.Do(TrimOut.Core.Decisions.Controls.Toggle(job.House.Remotes[0], job.Unit("W01")))),
        [ReadSort.AllFields] = (h => h.State.Items.Values.Single(i => i.Kind == ItemKind.Unit).Fields.Count(),
            job => job.Say("W01", UnitFacts.Fabric, "Linen")),
        [ReadSort.Children] = (h => h.Under(h.State.Items.Values.Single(i => i.Kind == ItemKind.Unit).Id, ItemKind.Punch).Length,
            job => job.Do(PunchList.Write(job.House, job.Unit("W01").Item, "mend it", Phase.Hang))),
        [ReadSort.Presence] = (h => h.FindPanel(h.State.Items.Values.Single(i => i.Kind == ItemKind.Panel).Id) is null,
            job => job.Do(new Draft("gone").PutStored(job.House.Panels[0].Id, Item.RemovedField, "yes"))),
        [ReadSort.ItemsOfAKind] = (h => h.ItemsOf(ItemKind.Room).Count(), job => job.Room("Attic")),
        [ReadSort.ListOfItems] = (h => h.Rooms.Length, job => job.Room("Attic")),
        [ReadSort.NoSuchItem] = (h => Enumerable.Range(1, 99).Count(n => h.Find($"laptop-{n}-0") is not null), job => job.Room("Attic")),
        [ReadSort.LookupKey] = (h => h.FindTag("W09")?.Id, job => job.Do(AddItems.Window(job.House, "W09", null))),
        [ReadSort.LookupNeighbor] = (h => h.UnitBefore(h.FindUnit(h.State.Items.Values.First(i => i.Kind == ItemKind.Unit).Id)!)?.Tag,
            MoveBehindAnother),
        [ReadSort.WholeLookup] = (h => h.Units.Length, job => job.Do(AddItems.Window(job.House, "W09", null))),
    };

    public static TheoryData<string> Sorts => [.. Enum.GetNames<ReadSort>()];

    [Theory]
    [MemberData(nameof(Sorts))]
    public void WhatIsReadThatWayIsNoted(string sort)
    {
        var (now, again, without) = Play(Enum.Parse<ReadSort>(sort));
        Assert.Equal(now, again);
        Assert.NotEqual(now, without);
    }

    private static void MoveBehindAnother(TestJob job)
    {
        job.Do(AddItems.Window(job.House, "W09", job.Unit("W01").Window.RoomId));
        job.Do(WalkingOrder.Move(job.Unit("W01").Window, 1));
    }

    private static (string Now, string Again, string Without) Play(ReadSort sort)
    {
        var (read, change) = Cases[sort];
        var job = Jobs.Walked().WithPanel().Add(ItemKind.Remote, "R1");
        var (check, before) = (new Tells(read), job.House);
        var (noted, forgotten) = (CheckReport.Of(before, [check]), CheckReport.Of(before, [check], r => r.Sort == sort));
        change(job);
        return (Text(CheckReport.Of(job.House, [check])), Text(noted.After(job.House)), Text(forgotten.After(job.House)));
    }

    private static string Text(CheckReport report) => report.Findings.Single().Found.Message.In(report.House);

    /// <summary>Says what it read, whatever that is.</summary>
    private sealed class Tells(Func<House, object?> read) : HouseCheck
    {
        private static readonly Message Read = new("{0}");

        public override CheckInfo Info { get; } = new("tells", "Tells", Severity.Note, Phase.WalkThrough, new Source(Source.CommonPractice, "none"));

        public override IEnumerable<CheckResult> Run(House house)
        {
            var told = Convert.ToString(read(house), CultureInfo.InvariantCulture) ?? "";
            yield return Result(new JobItself(house),
                new Outcome.Found(Read.With(Arg.Typed(told)), Read.With(Arg.Typed("")), new FieldRef(House.RootId, "name")));
        }
    }
}
