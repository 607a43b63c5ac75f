using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Decisions;

/// <summary>Names that one panel, hub, remote or part of the kit has and no other of its sort: who reads one knows which is meant.</summary>
internal static class OwnNames
{
    /// <summary>Whether a fact is such a name.</summary>
    public static bool Has(Fact fact) => (FactTable.IsKit(fact.Subject) || fact.Subject is ItemKind.Panel or ItemKind.Hub or ItemKind.Remote)
        && fact == FactTable.Find(fact.Subject, "name");

    /// <summary>Why an item can't be called so; null where it can. What already has that name keeps it, however it is written.</summary>
    /// <param name="house">The house.</param>
    /// <param name="kind">What it is.</param>
    /// <param name="name">The name.</param>
    /// <param name="except">The item that is to be called so; null for a new one.</param>
    public static Refusal? Refuse(House house, ItemKind kind, string name, string? except = null) =>
        house.ItemsOf(kind).Any(i => i.Id != except && SameName.Comparer.Equals(house.NameOf(i), name))
            ? new Refusal($"There is a {KebabCase.Of(kind).Replace('-', ' ')} {name} already.")
            : null;
}
