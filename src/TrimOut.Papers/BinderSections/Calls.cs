using TrimOut.Core;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;

namespace TrimOut.Papers.BinderSections;

/// <summary>Whom the owner calls, and for what; what nobody typed is a blank to write in, and the owner is never told to call himself.</summary>
internal static class Calls
{
    /// <summary>The crew, the makers, the electrician. The contact on site is for the time of the works and not among them.</summary>
    public static IEnumerable<(Inline For, Inline Who, Inline Number)> Of(House house)
    {
        var job = new JobItself(house);
        yield return Call(house, Ours("A covering that stays still, and the crew's work"), job.Show(HouseFacts.WarrantyCall), job.Show(HouseFacts.Crew));
        foreach (var kinds in KindsInUse.Of(house).Where(k => !string.IsNullOrWhiteSpace(k.Show(CoveringKindFacts.WarrantyCall)))
            .GroupBy(k => k.Show(CoveringKindFacts.WarrantyCall)))
            yield return Call(house, Ours($"The maker's warranty: {Join(", ", [.. kinds.Select(k => k.OnPaper())])}"), kinds.Key, null);
        if (!house.Panels.IsEmpty)
        {
            foreach (var typed in house.Panels.Select(p => p.Show(PanelFacts.ConnectedBy)).Where(t => !string.IsNullOrWhiteSpace(t)).DefaultIfEmpty("").Distinct())
                yield return Call(house, Ours("A breaker that trips again, and all mains work: a licensed electrician"), typed, null);
        }
    }

    private static (Inline For, Inline Who, Inline Number) Call(House house, Inline what, string? typed, string? otherwise)
    {
        var (who, number) = PartUnlessClient(house, typed);
        if (otherwise is not null && who.Length == 0)
            (who, number) = PartUnlessClient(house, otherwise) is var (name, itsNumber) ? (name, number ?? itsNumber) : default;
        return (what, who.Length == 0 ? Blank : who, number ?? Blank);
    }

    private static (string Who, Inline? Number) PartUnlessClient(House house, string? typed)
    {
        var call = PhoneNumber.Part(typed ?? "");
        return SameName.Comparer.Equals(call.Who, new JobItself(house).Show(HouseFacts.Client)) ? ("", null) : call;
    }
}
