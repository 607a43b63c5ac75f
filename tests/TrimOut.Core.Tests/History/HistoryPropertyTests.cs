using CsCheck;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.History;

public class HistoryPropertyTests
{
    private static readonly Fact[] Lengths = [WindowFacts.RoughWidth, WindowFacts.RoughHeight, WindowFacts.Depth];

    // Any sequence of values, undos and redos.
    private static readonly Gen<(int What, int Fact, int Inches)[]> Deeds = Gen.Select(Gen.Int[0, 9], Gen.Int[0, 2], Gen.Int[4, 40]).Array[1, 40];

    [Fact]
    public void FoldingAllAtOnceIsFoldingOneByOne() => Deeds.Sample(deeds =>
    {
        var job = Done(deeds);
        Same(job.House, HouseLog.Of(job.Scribe.Log.Changes).Value.House);
    }, iter: 60);

    /// <summary>
    /// Histories as no program writes them: items are put to before they are added, added again, under what isn't there or was undone, and undos of all
    /// sorts come in between. One by one or at once, it is one house.
    /// </summary>
    [Fact]
    public void FoldingACraftedHistoryAllAtOnceIsFoldingItOneByOne() => Crafted.Sample(changes =>
    {
        var log = HouseLog.Empty;
        foreach (var (at, edits) in changes.Index())
        {
            var id = new ChangeId("craft", at + 1);
            log = log.With(new Change(id, at + 1, DateTimeOffset.UnixEpoch, "Craft", "w", [.. edits.Select((e, n) => Edited(e, at, n))]));
            Same(HouseLog.Of(log.Changes).Value.House, log.House);
            for (var count = 0; count <= at && at == changes.Length - 1; count++)
                Same(HouseLog.Of(log.Changes.Take(count)).Value.House, log.At(count));
        }
    }, iter: 4000);

    private static readonly Gen<(int What, int Item, int Other)[][]> Crafted =
        Gen.Select(Gen.Int[0, 9], Gen.Int[0, 3], Gen.Int[0, 9]).Array[1, 4].Array[1, 12];

    private static Edit Edited((int What, int Item, int Other) edit, int at, int number)
    {
        string[] items = [House.RootId, "a", "b", "c"];
        var (item, other) = (items[edit.Item], items[edit.Other % items.Length]);
        return edit.What switch
        {
            < 4 when item != House.RootId => new Edit.Add(item, edit.Item == 1 ? ItemKind.Window : ItemKind.Unit, other),
            < 8 => new Edit.Put(item, "note", $"{at}-{number}", edit.Other % 2 == 0 ? [] : [new ChangeId("craft", Math.Max(1, edit.Other))]),
            _ => new Edit.Undo(new ChangeId("craft", 1 + edit.Other)),
        };
    }

    [Fact]
    public void TheOrderInWhichChangesComeDoesNotMatterNorWhetherTheyComeTwice() => Gen.Select(Deeds, Gen.Int).Sample((deeds, seed) =>
    {
        var job = Done(deeds);
        var mixed = job.Scribe.Log.Changes.Concat(job.Scribe.Log.Changes.Take(5)).ToArray();
        new Random(seed).Shuffle(mixed);
        Same(job.House, HouseLog.Of(mixed).Value.House);
    }, iter: 60);

    [Fact]
    public void EveryChangeSurvivesItsLineOfJson() => Deeds.Sample(deeds =>
    {
        foreach (var change in Done(deeds).Scribe.Log.Changes)
        {
            var line = ChangeJson.Write(change);
            Assert.DoesNotContain('\n', line);
            Assert.Equal(line, ChangeJson.Write(ChangeJson.Read(line).Value));
        }
    }, iter: 30);

    [Fact]
    public void UndoThenRedoChangesNothing() => Deeds.Sample(deeds =>
    {
        var job = Done(deeds);
        var before = job.House;
        if (job.Scribe.Undo().Ok)
        {
            Assert.True(job.Scribe.Redo().Ok);
            Same(before, job.House);
        }
    }, iter: 60);

    [Fact]
    public void UndoingEverythingLeavesAnEmptyHouse()
    {
        var job = Jobs.Roughed();
        while (job.Scribe.Undo().Ok)
            continue;
        Assert.Equal([House.RootId], job.House.Items.Values.Select(i => i.Id));
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("{}")]
    [InlineData("{\"v\":1}")]
    [InlineData("{\"v\":1,\"id\":\"x\",\"stamp\":1,\"at\":\"2026-03-02T08:00:00+00:00\",\"by\":\"b\",\"what\":\"w\",\"edits\":[]}")]
    [InlineData("""{"v":1,"id":"a:1","stamp":1,"at":"2026-03-02T08:00:00+00:00","by":"b","what":"w","edits":[{"put":"w1","field":"tag"}]}""")]
    [InlineData("""{"v":1,"id":"a:1","stamp":1,"at":"2026-03-02T08:00:00Z","by":"b","what":"","edits":[{"put":"w","field":"tag","value":"x","over":["y"]}]}""")]
    [InlineData("""{"v":1,"id":"a:1","stamp":1,"at":"2026-03-02T08:00:00+00:00","by":"b","what":"w","edits":["x"]}""")]
    [InlineData("""{"v":1,"id":"a:1","stamp":1,"at":"2026-03-02T08:00:00+00:00","by":"b","what":"w","edits":[]} trailing""")]
    [InlineData("""{"v":1,"id":"a:1","stamp":99999999999999999999,"at":"2026-03-02T08:00:00+00:00","by":"b","what":"w","edits":[]}""")]
    [InlineData("{\"v\":1,\"id\":\"a:1\",\"stamp\":1,\"at\":\"yesterday\",\"by\":\"b\",\"what\":\"w\",\"edits\":[]}")]
    public void ALineThatIsNoChangeIsRefused(string line) => Assert.False(ChangeJson.Read(line).Ok);

    [Fact]
    public void ALineOfANewerFormSaysSo() => Assert.Contains("newer TrimOut", ChangeJson.Read("{\"v\":99}").Reason!, StringComparison.Ordinal);

    [Theory]
    [InlineData("""{"paint":"blue"}""")]
    [InlineData("""{"move":"w1","to":{"put":[1,{"x":"}"}]},"over":"w2"}""")]
    [InlineData("""{"add":"w1","kind":"chandelier","under":"house"}""")]
    [InlineData("""{"put":{"many":["w1","w2"]},"field":"tag","value":null}""")]
    public void AnEditOfANewerKindIsPassedOnAsItCame(string edit)
    {
        var line = $$"""{"v":1,"id":"a:1","stamp":1,"at":"2026-03-02T08:00:00+00:00","by":"b","what":"w","edits":[{{edit}},{"undo":"a:9"}]}""";
        Assert.Equal(line, ChangeJson.Write(ChangeJson.Read(line).Value));
        Assert.IsType<Edit.Unread>(ChangeJson.Read(line).Value.Edits[0]);
    }

    [Fact]
    public void ItemsThatBelongToEachOtherInACircleAreInNoHouseAndHangNothing()
    {
        var house = HouseLog.Of([new Change(new ChangeId("a", 1), 1, default, "b", "w",
            [new Edit.Add("x", ItemKind.Unit, "y"), new Edit.Add("y", ItemKind.Unit, "x"), new Edit.Put("x", Item.RemovedField, "yes", []),
                new Edit.Put("y", "hub-name", "n", [])])]).Value.House;
        Assert.Empty(house.Units);
        Assert.Equal("(unit)", house.NameOf(house.Find("y")!));
        Assert.Empty(house.ItemsOf(ItemKind.Unit));
        Assert.Empty(RemovedAtWork.All(house));
    }

    [Fact]
    public void TwoChangesOfOneNameAreRefusedNotPicked()
    {
        var change = Jobs.Walked().Scribe.Log.Changes[3];
        Assert.Contains("Neither was picked", HouseLog.Of([change, change with { By = "Somebody else" }]).Reason!, StringComparison.Ordinal);
    }

    private static TestJob Done((int What, int Fact, int Inches)[] deeds)
    {
        var job = new TestJob().Window("W01");
        foreach (var (what, fact, inches) in deeds)
        {
            if (what < 2)
                job.Scribe.Undo();
            else if (what < 4)
                job.Scribe.Redo();
            else if (job.House.FindTag("W01") is { } window && SetFact.Typed(job.House, window.Item, Lengths[fact], $"{inches}\"") is { Ok: true } draft)
                job.Do(draft);
        }
        return job;
    }

    private static void Same(House a, House b)
    {
        Assert.Equal(a.Items.Values.Select(i => i.Id).Order(), b.Items.Values.Select(i => i.Id).Order());
        foreach (var item in a.Items.Values)
        {
            var other = b.Items[item.Id];
            Assert.Equal((item.Kind, item.Under, item.Place), (other.Kind, other.Under, other.Place));
            Assert.Equal(Values(item), Values(other));
        }
    }

    private static IEnumerable<string> Values(Item item) =>
        item.Fields.Where(f => f.Value.Length > 0).OrderBy(f => f.Key, StringComparer.Ordinal)
            .Select(f => $"{f.Key}={string.Join('|', f.Value.Select(h => $"{h.Id}:{h.Stored}"))}");
}
