using TrimOut.Core.Facts;

namespace TrimOut.Tests.Facts;

/// <summary>Facts that nothing reads, each with the reason why it is kept all the same.</summary>
internal static class KeptFacts
{
    public static IReadOnlyDictionary<Fact, string> Why { get; } = new Dictionary<Fact, string>
    {
        [HouseFacts.Latitude] = "Where the house stands, for programs that read the exported house, such as those that reckon with the sun.",
        [HouseFacts.Longitude] = "As the latitude.",
    }
    .Concat(FactTable.All.Where(AboutSheet.Is)
        .Select(f => KeyValuePair.Create<Fact, string>(f, "It says of which sheet the values of a part are, and goes with its file.")))
    .ToDictionary();
}
