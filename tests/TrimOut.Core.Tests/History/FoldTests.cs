using TrimOut.Core.History;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Tests.History;

/// <summary>What a history makes, told by hand: values over values, undos, and what comes back with its work.</summary>
public class FoldTests
{
    private static Change By(string device, long number, long stamp, params Edit[] edits) =>
        new(new ChangeId(device, number), stamp, new DateTimeOffset(2026, 3, 2, 8, 0, 0, TimeSpan.Zero), device.ToUpperInvariant(), "w", [.. edits]);

    private static Edit.Add Add(string item, ItemKind kind, string under) => new(item, kind, under);

    private static Edit.Put Put(string item, string field, string? value, params ChangeId[] over) => new(item, field, value, [.. over]);

    private static Edit.Undo Undo(string device, long number) => new(new ChangeId(device, number));

    private static ChangeId Id(string device, long number) => new(device, number);

    /// <summary>The house of these changes, folded at once and one by one: the same.</summary>
    private static House Of(params Change[] changes)
    {
        var house = HouseLog.Of(changes).Value.House;
        Assert.Equal(TwoLaptops.Picture(house), TwoLaptops.Picture(changes.Aggregate(HouseLog.Empty, (log, c) => log.With(c)).House));
        return house;
    }

    private static string Values(House house, string item, string field) =>
        string.Join(" ", house.Find(item)!.Heads(field).Select(h => $"{h.Id}={h.Stored ?? "nothing"}"));

    private static readonly Change Window = By("a", 1, 1, Add("w", ItemKind.Window, House.RootId), Put("w", "tag", "W01"), Add("u", ItemKind.Unit, "w"));

    [Fact]
    public void AValueStaysUntilSomebodyWhoSawItPutsAnotherOne()
    {
        var (one, two) = (By("a", 2, 2, Put("w", "note", "of a")), By("b", 1, 3, Put("w", "note", "of b")));
        Assert.Equal("a:2=of a b:1=of b", Values(Of(Window, one, two), "w", "note"));
        Assert.Equal("b:1=of b b:2=again", Values(Of(Window, one, two, By("b", 2, 4, Put("w", "note", "again", Id("a", 2)))), "w", "note"));
        Assert.Equal("b:2=nothing", Values(Of(Window, one, two, By("b", 2, 4, Put("w", "note", null, Id("a", 2), Id("b", 1)))), "w", "note"));
    }

    [Fact]
    public void OfOneChangeTheLastValueCounts() => Assert.Equal("a:2=second",
        Values(Of(Window, By("a", 2, 2, Put("w", "note", "first"), Put("w", "note", "second"))), "w", "note"));

    [Fact]
    public void WhatIsPutToNothingAddsNothingAndWhatIsAddedTwiceIsThereOnce()
    {
        var house = Of(Window, By("b", 1, 2, Put("nowhere", "note", "x"), Add("w", ItemKind.Unit, House.RootId)));
        Assert.Equal([House.RootId, "w", "u"], house.Items.Values.Select(i => i.Id));
        Assert.Equal((ItemKind.Window, House.RootId, 1), (house.Find("w")!.Kind, house.Find("w")!.Under, house.Find("w")!.Place));
    }

    [Fact]
    public void AnUndoTakesOutAllOfAChangeAndItsOwnUndoBringsItBack()
    {
        var note = By("a", 2, 2, Put("w", "note", "x"), Put("w", "photo", "p"));
        Assert.Equal("", Values(Of(Window, note, By("a", 3, 3, Undo("a", 2))), "w", "note"));
        Assert.Equal("", Values(Of(Window, note, By("a", 3, 3, Undo("a", 2))), "w", "photo"));
        Assert.Equal("a:2=x", Values(Of(Window, note, By("a", 3, 3, Undo("a", 2)), By("a", 4, 4, Undo("a", 3))), "w", "note"));
        Assert.Equal("", Values(Of(Window, note, By("a", 3, 3, Undo("a", 2)), By("a", 4, 4, Undo("a", 3)), By("a", 5, 5, Undo("a", 4))), "w", "note"));
    }

    [Fact]
    public void WhatWasReplacedByAnUndoneValueIsShownAgain()
    {
        var first = By("a", 2, 2, Put("w", "note", "first"));
        Assert.Equal("a:2=first", Values(Of(Window, first, By("a", 3, 3, Put("w", "note", "second", Id("a", 2))), By("a", 4, 4, Undo("a", 3))), "w", "note"));
    }

    [Fact]
    public void TwoUndosOfOneChangeAreTakenBackOnlyBoth()
    {
        var note = By("a", 2, 2, Put("w", "note", "x"));
        Change[] undone = [Window, note, By("a", 3, 3, Undo("a", 2)), By("b", 1, 4, Undo("a", 2))];
        Assert.Equal("", Values(Of([.. undone, By("b", 2, 5, Undo("b", 1))]), "w", "note"));
        Assert.Equal("a:2=x", Values(Of([.. undone, By("b", 2, 5, Undo("b", 1)), By("a", 4, 6, Undo("a", 3))]), "w", "note"));
    }

    [Fact]
    public void AnItemWhoseAddingWasUndoneIsGoneWithAllThatItHad() =>
        Assert.Equal([House.RootId], Of(Window, By("a", 2, 2, Undo("a", 1))).Items.Values.Select(i => i.Id));

    // The work of another laptop is never lost: the item comes back as one that was removed, by whoever undid its adding, with all that it had.
    [Theory]
    [InlineData("w")]
    [InlineData("u")]
    public void WorkOnAnItemWhoseAddingWasUndoneBringsItBackAsRemoved(string item)
    {
        var house = Of(Window, By("a", 2, 2, Undo("a", 1)), By("b", 1, 3, Put(item, "note", "x")));
        Assert.Equal([House.RootId, "w", "u"], house.Items.Values.Select(i => i.Id));
        Assert.Equal("a:2=a:2", Values(house, "w", Item.RemovedField));
        Assert.False(house.Find("u")!.Removed);
        Assert.Equal("A", house.Find("w")!.Latest(Item.RemovedField)!.By);
        Assert.Equal("a:1=W01", Values(house, "w", "tag"));
        Assert.Equal("b:1=x", Values(house, item, "note"));
        Assert.Empty(house.Windows);
    }

    [Fact]
    public void OnlyWhatBelongsToItComesBack()
    {
        var two = By("a", 1, 1, Add("w", ItemKind.Window, House.RootId), Add("u", ItemKind.Unit, "w"), Put("u", "serial", "7"),
            Add("v", ItemKind.Window, House.RootId), Put("v", "tag", "W02"));
        var house = Of(two, By("a", 2, 2, Undo("a", 1)), By("b", 1, 3, Put("w", "note", "x")));
        Assert.Equal([House.RootId, "w", "u"], house.Items.Values.Select(i => i.Id));
        Assert.Equal("a:1=7", Values(house, "u", "serial"));
        house = Of(two, By("a", 2, 2, Undo("a", 1)), By("b", 1, 3, Put("w", "note", "x")), By("b", 2, 4, Put("v", "note", "y")));
        Assert.Equal([House.RootId, "w", "u", "v"], house.Items.Values.Select(i => i.Id));
        Assert.All(["w", "v"], id => Assert.True(house.Find(id)!.Removed));
    }

    [Fact]
    public void APartThatWasAddedLaterComesBackByItself()
    {
        var house = Of(Window, By("a", 2, 2, Add("z", ItemKind.Unit, "w"), Put("z", "serial", "9")), By("a", 3, 3, Undo("a", 2)),
            By("b", 1, 4, Put("z", "note", "x")));
        Assert.True(house.Find("z")!.Removed);
        Assert.False(house.Find("w")!.Removed);
        Assert.Equal("a:2=9", Values(house, "z", "serial"));
    }

    [Fact]
    public void WhatIsAddedToAnItemWhoseAddingWasUndoneBringsItBackToo()
    {
        var house = Of(Window, By("a", 2, 2, Undo("a", 1)), By("b", 1, 3, Add("n", ItemKind.Unit, "w")));
        Assert.Equal([House.RootId, "w", "u", "n"], house.Items.Values.Select(i => i.Id));
        Assert.True(house.Find("w")!.Removed);
        Assert.Equal("w", house.Find("n")!.Under);
    }

    [Fact]
    public void ItemsThatWereAddedInACircleAndUndoneComeBackAndHangNothing()
    {
        var house = Of(By("a", 1, 1, Add("x", ItemKind.Unit, "y"), Add("y", ItemKind.Unit, "x")), By("a", 2, 2, Undo("a", 1)),
            By("b", 1, 3, Put("x", "note", "n")));
        Assert.Equal("b:1=n", Values(house, "x", "note"));
        Assert.Empty(house.Units);
    }

    // Whoever wrote the removal says what was seen; what says nothing covers all.
    [Fact]
    public void WhoRemovedAnItemHadSeenWhatTheRemovalSays()
    {
        var house = Of(Window, By("a", 2, 2, Put("w", Item.RemovedField, "a:1 b:2")));
        Assert.True(Seen.ByRemover(house.Find("w")!, Id("b", 2)));
        Assert.False(Seen.ByRemover(house.Find("w")!, Id("b", 3)));
        Assert.True(Seen.ByRemover(Of(Window, By("a", 2, 2, Put("w", Item.RemovedField, "yes"))).Find("w")!, Id("b", 3)));
        Assert.False(Seen.ByRemover(Of(Window, By("a", 2, 2, Put("w", Item.RemovedField, null))).Find("w")!, Id("b", 1)));
    }
}
