using TrimOut.Core.Facts;

namespace TrimOut.Core.Houses;

/// <summary>Somebody who has a part in the job.</summary>
public sealed class Contact(House house, Item item) : Subject(house, item)
{
    /// <summary>What they do in it; null while nobody said.</summary>
    public ContactPart? Part => Item.Get(ContactFacts.Part);

    /// <summary>The number that they answer.</summary>
    public string? Telephone => Item.Get(ContactFacts.Telephone);

    /// <summary>Whether the owner calls them when something fails.</summary>
    public bool AfterHandover => Item.Get(ContactFacts.AfterHandover) == YesNo.Yes;
}
