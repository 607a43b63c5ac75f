using TrimOut.Core.Units;

namespace TrimOut.Core.Checks;

/// <summary>Checks that say nothing yet, because details are missing or nobody checked a value of a sheet that they rest on: never a pass.</summary>
/// <param name="Checks">How many judgments wait.</param>
/// <param name="Facts">
/// For how many facts; each counts once. A check names the first one that it misses, and every value that it passes by unchecked.
/// </param>
public readonly record struct Waiting(int Checks, int Facts)
{
    /// <summary>Whether none waits.</summary>
    public bool None => Checks == 0;

    /// <summary>How many wait, and for how many facts.</summary>
    /// <param name="missing">What lacks a detail.</param>
    /// <param name="unread">What passes by values that nobody checked; none where nothing is given.</param>
    public static Waiting Of(IEnumerable<NotCheckedYet> missing, IReadOnlyCollection<PassedUnread>? unread = null)
    {
        var (all, by) = (missing as IReadOnlyCollection<NotCheckedYet> ?? [.. missing], unread ?? []);
        return new(all.Count + by.Count, all.Select(m => m.NotChecked.FillIn ?? new FieldRef(m.Subject.Id, m.NotChecked.Missing.Message.English))
            .Concat(by.SelectMany(u => u.Values)).Distinct().Count());
    }

    /// <summary>As it is said: "3 checks waiting for 1 detail".</summary>
    public override string ToString() => $"{NumberText.Counted(Checks, "check")} waiting for {NumberText.Counted(Facts, "detail")}";
}
