using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Panels;

/// <summary>A panel was off, and seen to be off, before joints were made on its outputs.</summary>
/// <remarks>
/// <para>Why: one touch of two live conductors, and an output of the panel is gone; nobody sees it before the unit hangs.</para>
/// <para>To clear: switch it off, see with a meter that its outputs are dead, look over every joint, and write how it was seen. The mains side is for the
/// licensed electrician only.</para>
/// </remarks>
public sealed class JointsUnderPower() : Check<Panel>(Subjects.Panels)
{
    private static readonly Message WasOn = new("Joints were made while {0} was on.", "was-on");
    private static readonly Message NotLookedAt = new("{0} was switched off, and nobody saw that its outputs were dead.", "not-looked-at");
    private static readonly Message OffNow =
        new("Switch it off, see with a meter that its low-voltage outputs are dead, look over every joint, read the volts at each window again, and write " +
            "how it was seen to be off. The mains side is for the licensed electrician only.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("joints-under-power", "Joints made on a panel that was not seen to be off", Severity.Stop, Phase.Power,
        new Source(Source.CommonPractice + "; local law on electrical work governs", "a meter read nothing at the outputs before the first joint"));

    /// <inheritdoc/>
    public override Outcome Judge(Panel subject) => subject.Item.Get(PanelFacts.OffSeen) switch
    {
        null => NotChecked.WhereAsked(subject, "off-before-joints", subject, PanelFacts.OffSeen),
        OffSeen.ItWasOn => Found(subject, WasOn),
        OffSeen.NotLookedAt => Found(subject, NotLookedAt),
        _ => subject.Item.Evidence(PanelFacts.OffBy) is null ? NotChecked.Of(subject, PanelFacts.OffBy) : new Outcome.Fine(),
    };

    private static Outcome.Found Found(Panel panel, Message message) =>
        new(message.With(Arg.Name(panel)), OffNow, FieldRef.To(panel.Item, PanelFacts.OffSeen));
}
