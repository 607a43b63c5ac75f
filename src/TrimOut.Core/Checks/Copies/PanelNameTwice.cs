using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Copies;

/// <summary>No two panels have one name.</summary>
/// <remarks>
/// <para>Why: two laptops can each add a panel under one name; whoever reads it on a cable or a door sheet then lands the cable on the wrong one.</para>
/// <para>To clear: give one of them another name, on its door too, or remove it when both are the same panel.</para>
/// </remarks>
public sealed class PanelNameTwice() : Check<Panel>(Subjects.Panels)
{
    private static readonly Message AlsoAnother = new("{0} is the name of {1} panels.");
    private static readonly Message AnotherName = new("Give one of them another name, on its door too, or remove it if both are the same panel.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("panel-name-twice", "Two panels have the same name", Severity.Stop, Phase.RoughIn,
        new Source(Source.CommonPractice, "every panel a name of its own, whatever its case"));

    /// <inheritdoc/>
    public override Outcome Judge(Panel subject)
    {
        if (subject.Item.Get(PanelFacts.Name) is not { } name)
            return new Outcome.DoesNotApply();
        var others = subject.House.PanelsAt(Lookups.PanelsByName, name).Where(p => p.Id != subject.Id).ToList();
        return others.Count == 0 ? new Outcome.Fine()
            : new Outcome.Found(AlsoAnother.With(Arg.Of([Arg.Typed(ShownText.Key(name).ToUpperInvariant())], Arg.Name(subject)),
                Arg.Of(others.Select(o => Arg.Name(o)), others.Count + 1)), AnotherName, FieldRef.To(subject.Item, PanelFacts.Name));
    }
}
