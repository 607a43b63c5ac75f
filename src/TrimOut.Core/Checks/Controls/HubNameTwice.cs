using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Controls;

/// <summary>No two units have one name at the hub.</summary>
/// <remarks>
/// <para>Why: nobody can say which of the two is meant, nor can a voice.</para>
/// <para>To clear: rename one at the hub and here.</para>
/// </remarks>
public sealed class HubNameTwice : HouseCheck
{
    private static readonly Message AlsoCalled = new("{0} is also called \"{1}\" at the hub.");
    private static readonly Message RenameOne = new("Give one of the two another name, at the hub and here.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("hub-name-twice", "Two units have one name at the hub", Severity.Stop, Phase.Pair,
        new Source(Source.CommonPractice, "every name once, whatever its case"));

    /// <inheritdoc/>
    public override IEnumerable<CheckResult> Run(House house)
    {
        var byName = house.Units.ToLookup(u => u.Item.Get(UnitFacts.HubName), StringComparer.OrdinalIgnoreCase);
        foreach (var unit in house.Units)
        {
            if (unit.Item.Get(UnitFacts.HubName) is not { } name)
                yield return Result(unit, Unknown.Of(unit, UnitFacts.HubName));
            else if (byName[name].FirstOrDefault(u => u.Id != unit.Id) is { } other)
                yield return Result(unit, new Outcome.Found(AlsoCalled.With(Arg.Name(other), Arg.Typed(name)), RenameOne,
                    FieldRef.To(unit.Item, UnitFacts.HubName)));
            else
                yield return Result(unit, new Outcome.Fine());
        }
    }
}
