using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Testing;

/// <summary>Values that a detail of a part may have instead of the one that it has, to see what changes with it.</summary>
public static class OtherValues
{
    private static readonly string[] Tries =
        ["1", "2", "3", "12", "13", "24", "25", "0.85", "0.9", "2 screws", "3 screws", "red, black", "blue, white", "red", "one", "other words"];

    /// <summary>Those values as they are stored, the one that it has last.</summary>
    public static IEnumerable<string> Of(House house, Item part, Fact fact)
    {
        var now = part.Latest(fact)!.Stored;
        var options = fact.Options(house).Select(o => o.Stored).ToList();
        return (options.Count > 0 ? options
            : fact is Fact<Length> length && part.Get(length) is { } stands
                ? [Stored(fact, stands + Length.FromInches(0, 1, 16)), Stored(fact, stands + Length.FromInches(0, 3, 16))]
            : Tries.Select(t => fact.ReadTyped(t, house)).Where(r => r.Ok).Select(r => r.Value)).Where(v => v != now).Append(now!);
    }

    private static string Stored(Fact fact, Length length) => fact.ReadTyped(length.Show(DisplayUnits.Inches), House.Empty).Value;
}
