using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Boxes;

/// <summary>No two units have one serial number, and none has that of a unit that was taken off.</summary>
/// <remarks>
/// <para>Why: a warranty is asked for by the serial, and a serial that stands at two units covers neither.</para>
/// <para>To clear: read the serial of both units again. What says that there is none, such as n/a, is no serial, and is asked for.</para>
/// </remarks>
public sealed class SerialTwice : HouseCheck
{
    private static readonly Message AlsoThere = new("Serial {0} also stands at {1}.");
    private static readonly Message TakenOff = new("Serial {0} is that of a unit that was taken off ({1}).", "taken-off");
    private static readonly Message ReadNew =
        new("Read the serial of the unit that hangs there now. If the one that was taken off came back repaired, waive this and say so.");
    private static readonly Message ReadAgain = new("Read the serial on both units, and put the wrong one right.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("serial-twice", "Two units have the same serial number", Severity.Caution, Phase.Receive,
        new Source(Source.CommonPractice, "every serial once"));

    /// <inheritdoc/>
    public override IEnumerable<CheckResult> Run(House house)
    {
        var units = house.Units.Select(u => (Unit: u, Serial: u.Item.Evidence(UnitFacts.Serial)?.Trim())).ToList();
        var bySerial = units.Where(u => u.Serial is not null).ToLookup(u => u.Serial!, u => u.Unit, SameName.Comparer);
        var takenOff = house.Services.Where(s => s.TakenOff is { } serial && !AbsenceWords.SayNoMore(serial))
            .ToLookup(s => s.TakenOff!.Trim(), SameName.Comparer);
        return units.SelectMany(u => Results(u.Unit, Judge(u.Unit, u.Serial, bySerial, takenOff)));
    }

    private static Outcome Judge(Unit unit, string? serial, ILookup<string, Unit> bySerial, ILookup<string, Service> takenOff) =>
        serial is null ? NotChecked.Of(unit, UnitFacts.Serial)
        : Outcome.All(Twice(unit, serial, [.. bySerial[serial].Where(u => u.Id != unit.Id)]), OfOld(unit, serial, [.. takenOff[serial]])) is { } found ? found
        : new Outcome.Fine();

    private static Outcome.Found? Twice(Unit unit, string serial, List<Unit> others) => others is not [var other, ..] ? null
        : new Outcome.Found(AlsoThere.With(Arg.Typed(serial), Arg.Of(others.Select(o => Arg.Name(o)), Arg.Name(other))), ReadAgain,
            FieldRef.To(unit.Item, UnitFacts.Serial));

    private static Outcome.Found? OfOld(Unit unit, string serial, List<Service> services) => services is not [.., var last] ? null
        : new Outcome.Found(TakenOff.With(Arg.Typed(serial), Arg.Of(services.Select(s => Arg.Name(s)), Arg.Name(last))), ReadNew,
            FieldRef.To(unit.Item, UnitFacts.Serial));
}
