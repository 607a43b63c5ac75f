using System.Collections.Frozen;
using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Screens.Kit;

/// <summary>Which checks read each value of a sheet: from the reads that were noted of every check, as docs/facts.md lists them.</summary>
internal static class ChecksByValue
{
    private static readonly FrozenDictionary<string, IReadOnlyList<CheckInfo>> Known = Read();

    /// <summary>The checks that read a value.</summary>
    public static IReadOnlyList<CheckInfo> Of(Fact fact) => Known.GetValueOrDefault(Key(fact)) ?? [];

    /// <summary>The name of a value in the list.</summary>
    public static string Key(Fact fact) => $"{KebabCase.Of(fact.Subject)}/{fact.Name}";

    private static FrozenDictionary<string, IReadOnlyList<CheckInfo>> Read()
    {
        using var list = new StreamReader(typeof(ChecksByValue).Assembly.GetManifestResourceStream("checks-by-value.txt")!);
        return list.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line.Split(": "))
            .ToFrozenDictionary(parts => parts[0],
                parts => (IReadOnlyList<CheckInfo>)[.. parts[1].TrimEnd().Split(", ").Select(AllChecks.Find).OfType<ICheck>().Select(c => c.Info)],
                StringComparer.Ordinal);
    }
}
