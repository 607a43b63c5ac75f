using System.Globalization;
using System.Text.RegularExpressions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Controls;

/// <summary>A wall remote has a plate with as many gangs as it takes.</summary>
/// <remarks>
/// <para>Why: a remote of three gangs does not go onto a plate of one, and behind the plate is a box in a finished wall.</para>
/// <para>To clear: a larger plate and box, or another remote. The gangs are read from what is written of the plate, such as 2-gang, left.</para>
/// </remarks>
public sealed partial class PlateTooSmall() : Check<Remote>(Subjects.Remotes)
{
    private static readonly Message TooSmall = new("It takes {0} gangs; its plate is \"{1}\".");
    private static readonly Message PlanLarger = new("Plan a plate and a box of {0} gangs, or choose a smaller remote.");
    private static readonly Message HowManyGangs = new("how many gangs the wall plate has");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("plate-too-small", "Remote is larger than its wall plate", Severity.Stop, Phase.Pair,
        new Source(Source.MakersSheet, "gangs of the plate >= gangs of the remote"));

    /// <inheritdoc/>
    public override Outcome Judge(Remote subject)
    {
        if (subject.Type?.Item.Get(RemoteTypeFacts.Gangs) is not { } gangs)
            return NotChecked.Of(subject.Type, RemoteTypeFacts.Gangs, subject, RemoteFacts.Type);
        if (gangs == 0)
            return new Outcome.DoesNotApply();
        if (subject.Item.Get(RemoteFacts.Plate) is not { } plate)
            return NotChecked.Of(subject, RemoteFacts.Plate);
        var field = FieldRef.To(subject.Item, RemoteFacts.Plate);
        return Gangs().Match(plate) is not { Success: true } said ? new Outcome.NotChecked(HowManyGangs, field)
            : int.Parse(said.Groups[1].ValueSpan, CultureInfo.InvariantCulture) >= gangs ? new Outcome.Fine()
            : new Outcome.Found(TooSmall.With(gangs, Arg.Typed(plate)), PlanLarger.With(gangs), field);
    }

    [GeneratedRegex(@"(\d{1,2})\s*-?\s*gang", RegexOptions.IgnoreCase)]
    private static partial Regex Gangs();
}
