using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Panels;

/// <summary>The outputs of a panel stay within Class 2 by the figures of its sheet.</summary>
/// <remarks>
/// <para>Why: only Class 2 wiring may be run as loosely as low-voltage cable is; past the limits the whole wiring falls under stricter rules.</para>
/// <para>To clear: hold the sheet against the nameplate, which must say Class 2; else ask an electrician.</para>
/// </remarks>
public sealed class PanelPastClassTwo() : Check<Panel>(Subjects.Panels)
{
    private static readonly Message PastLimit = new("An output of {0} gives {1} at {2}; a Class 2 supply gives {3} at the most.");
    private static readonly Message ReadNameplate =
        new("Compare the sheet with the nameplate: it must say Class 2. Else ask an electrician; the code in force governs.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("panel-past-class-two", "Output is past the Class 2 limits", Severity.Stop, Phase.RoughIn,
        new Source(ClassTwo.Source, "current per output <= nameplate current of a limited supply of that voltage"));

    /// <inheritdoc/>
    public override Outcome Judge(Panel subject)
    {
        if (subject.Type is not { Supply: { } supply } type)
            return NotChecked.Of(subject.Type, PanelTypeFacts.Supply, subject, PanelFacts.Type);
        if (type.OutputCurrent is not { } gives)
            return NotChecked.Of(type, PanelTypeFacts.OutputCurrent);
        if (ClassTwo.Of(supply) is not { Ok: true } limits)
            return NotChecked.Of(type, PanelTypeFacts.Supply);
        var most = limits.Value.NameplateCurrent;
        var working = Working.Of(Info.Source.Formula, () =>
        [
            ("supply", supply.ToString()), ("per output", gives.ToString()), ("nameplate current", most.ToString()),
            ("nameplate power", limits.Value.NameplatePower.ToString()),
        ]);
        return gives <= most
            ? new Outcome.Fine(working)
            : new Outcome.Found(PastLimit.With(Arg.Name(type), gives, supply, most), ReadNameplate,
                FieldRef.To(type.Item, PanelTypeFacts.OutputCurrent), working);
    }
}
