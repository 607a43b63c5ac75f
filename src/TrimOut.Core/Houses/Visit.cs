using TrimOut.Core.Facts;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Houses;

/// <summary>One day's work or delivery at the house.</summary>
public sealed class Visit(House house, Item item) : Subject(house, item)
{
    /// <summary>The day that is agreed; null while none is.</summary>
    public DateOnly? On => Item.Get(VisitFacts.On);

    /// <summary>The phase that it belongs to.</summary>
    public Phase? Phase => Item.Get(VisitFacts.Phase);

    /// <summary>How it stands; planned while nobody said otherwise.</summary>
    public VisitState State => Item.Get(VisitFacts.State) ?? VisitState.Planned;

    /// <summary>Who is expected, in the order of the contacts; those who were removed are not.</summary>
    public IEnumerable<Contact> Expected => House.Contacts.Where(c => Item.Get(VisitFacts.Expects, c.Id) == YesNo.Yes);
}
