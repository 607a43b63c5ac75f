using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.History;

public class DraftTests
{
    [Fact]
    public void WhatIsNotKnownIsNotPut()
    {
        var width = Length.FromMillimetres(900);
        Assert.Empty(new Draft("d").PutIf(House.RootId, WindowFacts.RoughWidth, (Length?)null).PutIf(House.RootId, WindowFacts.Note, (string?)null).Edits);
        Assert.Equal<Edit>(
            [new Edit.Put(House.RootId, "rough-width", WindowFacts.RoughWidth.Write(width), []), new Edit.Put(House.RootId, "note", "arched", [])],
            new Draft("d").PutIf(House.RootId, WindowFacts.RoughWidth, (Length?)width).PutIf(House.RootId, WindowFacts.Note, "arched").Edits);
    }

    [Fact]
    public void EachNewItemHasANameOfItsOwn()
    {
        var draft = new Draft("d").New(ItemKind.Window, House.RootId, out var window).New(ItemKind.Unit, window, out var unit);
        Assert.NotEqual(window, unit);
        Assert.Equal<Edit>([new Edit.Add(window, ItemKind.Window, House.RootId), new Edit.Add(unit, ItemKind.Unit, window)], draft.Edits);
        Assert.Equal(3, draft.And(new Draft("e").PutStored(unit, "note", null)).Edits.Length);
    }
}
