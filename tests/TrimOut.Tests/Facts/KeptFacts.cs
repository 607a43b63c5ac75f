using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Tests.Facts;

/// <summary>Facts that nothing reads, each with the reason why it is kept all the same.</summary>
internal static class KeptFacts
{
    public static IReadOnlyDictionary<Fact, string> Why { get; } = new Dictionary<Fact, string>
    {
    }
    .Concat(FactTable.All.Where(f => AboutSheet.Is(f) && !IsOnPaper(f))
        .Select(f => KeyValuePair.Create<Fact, string>(f, "It says of which sheet the values of a part are, and goes with its file.")))
    .ToDictionary();

    /// <summary>Papers mark what was not checked against the edition that a part has now.</summary>
    private static bool IsOnPaper(Fact fact) =>
        fact.Name == AboutSheet.Edition && fact.Subject != ItemKind.HeadCover;
}
