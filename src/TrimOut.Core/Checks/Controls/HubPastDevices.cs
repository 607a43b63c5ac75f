using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Controls;

/// <summary>A hub knows no more devices than it can; remotes count.</summary>
/// <remarks>
/// <para>Why: the device after the last can't be paired, on the last evening.</para>
/// <para>To clear: a second hub, or fewer remotes.</para>
/// </remarks>
public sealed class HubPastDevices() : Check<Hub>(Subjects.Hubs)
{
    private static readonly Message TooMany = new("{0} has {1} units and {2} remotes, {3} devices; it takes {4}.");
    private static readonly Message SecondHub = new("Add a second hub and move whole rooms to it.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("hub-past-devices", "Hub has too many devices", Severity.Stop, Phase.Pair,
        new Source(Source.MakersSheet, "units + remotes <= devices"));

    /// <inheritdoc/>
    public override Outcome Judge(Hub subject)
    {
        var (units, remotes) = (subject.House.Look(Lookups.UnitsByHub, subject.Id).Count, subject.House.Look(Lookups.RemotesByHub, subject.Id).Count);
        if (subject.Type?.Devices is not { } most)
            return NotChecked.Of(subject.Type, HubTypeFacts.Devices, subject, HubFacts.Type);
        var working = Working.Of(Info.Source.Formula, () =>
            [("units", NumberText.Plain(units)), ("remotes", NumberText.Plain(remotes)), ("devices", NumberText.Plain(most))]);
        return units + remotes <= most
            ? new Outcome.Fine(working)
            : new Outcome.Found(TooMany.With(Arg.Name(subject), units, remotes, units + remotes, most), SecondHub, FieldRef.To(subject.Item, HubFacts.Type),
                working);
    }
}
