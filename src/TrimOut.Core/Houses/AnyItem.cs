namespace TrimOut.Core.Houses;

/// <summary>An item seen as no more than an item, whatever it is.</summary>
public sealed class AnyItem(House house, Item item) : Subject(house, item);
