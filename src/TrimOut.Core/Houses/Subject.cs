using TrimOut.Core.Facts;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Houses;

/// <summary>An item of a house, seen as what it is.</summary>
/// <param name="house">The house that it is in.</param>
/// <param name="item">The item.</param>
public abstract class Subject(House house, Item item)
{
    /// <summary>The house that it is in.</summary>
    public House House { get; } = house;

    /// <summary>The item with its facts.</summary>
    public Item Item { get; } = item;

    /// <summary>Its id.</summary>
    public string Id => Item.Id;

    /// <summary>What it is called.</summary>
    public string Name => House.NameOf(Item);

    /// <summary>What was said of a step; null when nothing was, and where a laptop took the mark back for a replacement that another did not know of.</summary>
    public StepMark? MarkOf(Step step) =>
        Item.Latest(step.Field, out var several)?.Value is StepMark mark && !(several && AskedAgain.IsTakenBack(Item, step)) ? mark : null;

    /// <summary>The shown form of a fact; empty when it is missing.</summary>
    public string Show(Fact fact, string? key = null) => fact.ShowOf(Item, House, key);

    /// <summary>The item that a fact points at; null when it is missing or was removed.</summary>
    protected internal Item? Target(Fact<ItemRef> fact) =>
        Item.Get(fact) is { } target && House.Find(target.Id) is { Removed: false } found ? found : null;
}
