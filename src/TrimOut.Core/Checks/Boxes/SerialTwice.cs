using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Boxes;

/// <summary>No two units have one serial number.</summary>
/// <remarks>
/// <para>Why: a warranty is asked for by the serial, and a serial that stands at two units covers neither.</para>
/// <para>To clear: read the serial of both units again. What says that there is none, such as n/a, is no serial, and is asked for.</para>
/// </remarks>
public sealed class SerialTwice : HouseCheck
{
    private static readonly Message AlsoThere = new("Serial {0} also stands at {1}.");
    private static readonly Message ReadAgain = new("Read the serial on both units, and put the wrong one right.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("serial-twice", "Two units have the same serial number", Severity.Caution, Phase.Receive,
        new Source(Source.CommonPractice, "every serial once"));

    /// <inheritdoc/>
    public override IEnumerable<CheckResult> Run(House house)
    {
        var units = house.Units.Select(u => (Unit: u, Serial: u.Item.Evidence(UnitFacts.Serial)?.Trim())).ToList();
        var bySerial = units.Where(u => u.Serial is not null).ToLookup(u => u.Serial!, u => u.Unit, SameName.Comparer);
        return units.Select(u => Result(u.Unit, Judge(u.Unit, u.Serial, bySerial)));
    }

    private static Outcome Judge(Unit unit, string? serial, ILookup<string, Unit> bySerial) =>
        serial is null ? NotChecked.Of(unit, UnitFacts.Serial)
        : bySerial[serial].Where(u => u.Id != unit.Id).ToList() is [var other, ..] others
            ? new Outcome.Found(AlsoThere.With(Arg.Typed(serial), Arg.Of(others.Select(o => Arg.Name(o)), Arg.Name(other))), ReadAgain,
                FieldRef.To(unit.Item, UnitFacts.Serial))
        : new Outcome.Fine();
}
