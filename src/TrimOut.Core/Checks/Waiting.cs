namespace TrimOut.Core.Checks;

/// <summary>Checks that say nothing yet, because facts are missing: never a pass.</summary>
/// <param name="Checks">How many judgements wait.</param>
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

    /// <summary>As it is said: "3 checks waiting for 1 fact".</summary>
    public override string ToString() => $"{Counted(Checks, "check")} waiting for {Counted(Facts, "fact")}";

    private static string Counted(int count, string what) => $"{Units.NumberText.Plain(count)} {what}{(count == 1 ? "" : "s")}";
}
