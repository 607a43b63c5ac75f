using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Orders;

/// <summary>Sizes of a kind that is in use, or was checked against its sheet, are ordered in steps of the units that the house is measured in.</summary>
/// <remarks>
/// <para>Why: a size in steps of the other units has parts of a millimetre or of a sixteenth that no tape shows, and whoever reads the order rounds it
/// once more.</para>
/// <para>To clear: read the step on the maker's sheet in the house's units.</para>
/// </remarks>
public sealed class StepOffUnits() : Check<CoveringKind>(Subjects.Kinds)
{
    private static readonly Message NoMillimetres = new("Sizes of {0} are ordered in steps of {1}, and the house is measured in millimeters.", "millimetres");
    private static readonly Message NoInches = new("Sizes of {0} are ordered in steps of {1}, and the house is measured in inches.", "inches");
    private static readonly Message WholeMillimetres = new("Read the step on the maker's sheet again: whole millimeters, or the part of one that it says.");
    private static readonly Message PartOfInch = new("Read the step on the maker's sheet again: a part of an inch that a tape shows.");

    private static readonly Length HalfMillimetre = Length.FromMillimetres(0.5m);
    private static readonly Length FinestOnTape = Length.FromInches(0, 1, 64);

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("step-off-units", "Order steps are not in the units of the house", Severity.Caution,
        Phase.WalkThrough, new Source(Source.CommonPractice,
            "millimeters: halves of a millimeter or more, or a part that makes up a whole one; inches: 64ths, or a part that makes up a whole one"));

    /// <inheritdoc/>
    public override Outcome Judge(CoveringKind subject)
    {
        if (subject.House.Look(Lookups.UsersOfPart, subject.Id).Count == 0 && !subject.IsChecked(CoveringKindFacts.RoundTo))
            return new Outcome.DoesNotApply();
        if (subject[CoveringKindFacts.RoundTo] is not { } step)
            return NotChecked.Of(subject, CoveringKindFacts.RoundTo);
        var metric = subject.House.DisplayUnits == DisplayUnits.Millimetres;
        var (finest, whole) = metric ? (HalfMillimetre, Length.FromMillimetres(1)) : (FinestOnTape, Length.FromInches(1));
        return IsWhole(step, finest) || IsWhole(whole, step)
            ? new Outcome.Fine()
            : new Outcome.Found((metric ? NoMillimetres : NoInches).With(Arg.Name(subject), Arg.Value(CoveringKindFacts.RoundTo, step)),
                metric ? WholeMillimetres : PartOfInch, FieldRef.To(subject.Item, CoveringKindFacts.RoundTo));
    }

    private static bool IsWhole(Length of, Length part) => of.Nanometres % part.Nanometres == 0;
}
