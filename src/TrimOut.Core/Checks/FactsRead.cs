using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Reads;

namespace TrimOut.Core.Checks;

/// <summary>The facts behind what was read of a house: the inputs of a check, as it read them.</summary>
internal static class FactsRead
{
    /// <summary>Each fact once, in the order in which they were first read.</summary>
    public static IEnumerable<Fact> Of(House house, IEnumerable<long> reads) => reads
        .Select(key => new ReadKey(key))
        .Select(read => read.IsLookup || read.Place >= house.State.Items.Count ? null : read.FactOf(house.State.Items[read.Place].Kind))
        .OfType<Fact>().Distinct();
}
