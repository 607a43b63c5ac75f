using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Panels;

/// <summary>An output that feeds several units can start those that move together, and stays within Class 2.</summary>
/// <remarks>
/// <para>Why: each alone is well within it, and the group or the preset that moves them all is not.</para>
/// <para>To clear: an output for each, or let them move one after the other.</para>
/// </remarks>
public sealed class OutputOverloadedTogether : RunCheck
{
    private static readonly Message PastOutput =
        new("The {0} units of {1} on {2} output {3} draw {4} when they start together; an output gives {5}.", "output");
    private static readonly Message PastClassTwo =
        new("The {0} units of {1} on {2} output {3} draw {4} when they start together; a Class 2 supply gives {5} at the most.", "class-2");
    private static readonly Message OnePastOutput = new("{0} on {1} output {2} draws {3} when it starts; an output gives {4}.", "output");
    private static readonly Message OnePastClassTwo =
        new("{0} on {1} output {2} draws {3} when it starts; a Class 2 supply gives {4} at the most.", "class-2");
    private static readonly Message LandApart = new("Land them on outputs of their own, or let them start one after the other.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("output-overloaded-together", "Units that move together overload an output", Severity.Stop,
        Phase.Power,
        new Source(Source.MakersSheet + "; " + ClassTwo.Source,
            "sum of the larger of starting and running current, over the units on the output that one press moves, <= per output and <= Class 2 " +
                "nameplate current"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        // It is said once for an output, of the first of its units.
        if (Load.OutputOf(subject) is not { } place || subject.House.UnitsAt(Lookups.UnitsByOutput, Load.OutputKey(place))
            .ToList() is not [var first, _, ..] units ||
            first.Id != subject.Unit.Id)
        {
            return new Outcome.DoesNotApply();
        }
        var (panel, output, load) = (subject.House.FindPanel(place.Panel)!, place.Output, Load.Largest(units)!.Value);
        if (panel.Type?.OutputCurrent is not { } gives)
            return NotChecked.Of(panel.Type, PanelTypeFacts.OutputCurrent, panel, PanelFacts.Type);
        if (panel.Type.Supply is not { } supply)
            return NotChecked.Of(panel.Type, PanelTypeFacts.Supply);
        var classTwo = ClassTwo.Of(supply);
        if (!classTwo.Ok)
            return NotChecked.Of(panel.Type, PanelTypeFacts.Supply);
        var nameplate = classTwo.Value.NameplateCurrent;
        var working = Working.Of(Info.Source.Formula, () =>
        [
            ("moves together", load.Name.For(new Reader(subject.House))), ("units", NumberText.Plain(load.Units)), ("peak", load.Peak.ToString()),
            ("per output", gives.ToString()), ("Class 2 nameplate current", nameplate.ToString()),
        ]);
        Outcome.Found? Found(Message past, Message one, Current most)
        {
            if (load.Peak <= most)
                return null;
            var names = Load.NamesPast(units, most, load);
            var message = load.Units == 1
                ? one.With(names, Arg.Name(panel), output, load.Peak, most)
                : past.With(load.Units, names, Arg.Name(panel), output, load.Peak, most);
            return new(message, LandApart, FieldRef.To(subject.Item, RunFacts.Output), working)
            {
                ToldOf = [.. units.Skip(1).Select(u => new Outcome.Told(u.Run!.Id, message))],
            };
        }
        var (byOutput, byClassTwo) = (Found(PastOutput, OnePastOutput, gives), Found(PastClassTwo, OnePastClassTwo, nameplate));
        if (Outcome.All(gives <= nameplate ? [byOutput, byClassTwo] : [byClassTwo, byOutput]) is { } faults)
            return faults;
        // What is not known only adds: where the rest is too much already, nothing is waited for.
        return units.FirstOrDefault(u => Load.Of(u) is null) is { } silent
            ? NotChecked.Of(silent.Kind, CoveringKindFacts.StartingCurrent, silent, UnitFacts.Kind)
            : new Outcome.Fine(working);
    }
}
