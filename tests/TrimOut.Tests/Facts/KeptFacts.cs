using TrimOut.Core.Facts;

namespace TrimOut.Tests.Facts;

/// <summary>Facts that nothing reads, each with the reason why it is kept all the same.</summary>
internal static class KeptFacts
{
    public static IReadOnlyDictionary<Fact, string> Why { get; } = new Dictionary<Fact, string>
    {
    }
    .Concat(FactTable.All.Where(f => AboutSheet.Is(f) && f.Name == AboutSheet.HeldBy)
        .Select(f => KeyValuePair.Create<Fact, string>(f, "It goes with the file of a part, and then stands on the parts list.")))
    .ToDictionary();
}
