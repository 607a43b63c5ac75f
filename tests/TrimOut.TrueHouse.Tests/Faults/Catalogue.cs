namespace TrimOut.TrueHouse.Tests.Faults;

/// <summary>Every fault, in the order in which it happens.</summary>
public static class Catalogue
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<Fault> All { get; } =
    [
        .. typeof(Catalogue).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(Fault)) && !t.IsAbstract).Select(t => (Fault)Activator.CreateInstance(t)!)
            .OrderBy(f => f.In).ThenBy(f => f.Id, StringComparer.Ordinal),
    ];

    /// <summary>The fault of that name.</summary>
    public static Fault Find(string id) => All.Single(f => f.Id == id);
}
