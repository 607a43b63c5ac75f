using TrimOut.Core.Units;

namespace TrimOut.Core.Checks;

/// <summary>Checks that say nothing yet, because details are missing: never a pass.</summary>
/// <param name="Checks">How many judgments wait.</param>
/// <param name="Facts">For how many facts; each counts once, and each check names the first one that it misses.</param>
public readonly record struct Waiting(int Checks, int Facts)
{
    /// <summary>Whether none waits.</summary>
    public bool None => Checks == 0;

    /// <summary>How many wait, and for how many facts.</summary>
    public static Waiting Of(IEnumerable<NotCheckedYet> missing)
    {
        var all = missing as IReadOnlyCollection<NotCheckedYet> ?? [.. missing];
        return new(all.Count, all.Select(m => m.NotChecked.FillIn ?? new FieldRef(m.Subject.Id, m.NotChecked.Missing.Message.English)).Distinct().Count());
    }

    /// <summary>As it is said: "3 checks waiting for 1 detail".</summary>
    public override string ToString() => $"{NumberText.Counted(Checks, "check")} waiting for {NumberText.Counted(Facts, "detail")}";
}
