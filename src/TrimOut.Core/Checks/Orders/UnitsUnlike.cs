using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Orders;

/// <summary>
/// Units side by side in one opening are alike: of one kind, fabric, color and opacity, under one head cover; and one fabric in one color has one opacity
/// in the whole house.
/// </summary>
/// <remarks>
/// <para>Why: side by side everybody sees what differs, and it is mostly the line of another window that was read on the owner's list.</para>
/// <para>To clear: choose one for all; where the owner wants them unlike, waive it and say so. Units that have one place from the left do not hang side by
/// side and are not compared. A fabric that is made in two opacities says in its name which one it is.</para>
/// </remarks>
public sealed class UnitsUnlike : WindowCheck
{
    private static readonly Message Unlike = new("Side by side, and not of one {0}: {1}.");
    private static readonly Message OfUnit = new("{0} {1}");
    private static readonly Message ChooseOne = new("Choose one for all units of {0}; if they are to differ, waive this and say who wants it so.");
    private static readonly Message CallToday =
        new("If it is a slip, call the maker today: until it is cut it can be changed. If they are to differ, waive this and say who wants it so.");

    private static readonly Message AgreeOrOrderAgain =
        new("Have the owner agree and waive this, or order again what differs; put right what is only written wrong.");

    private static readonly Message TwoOpacities = new("{0} in {1} is {2} at {3} and {4} at {5}: one fabric has one opacity.", "two-opacities");
    private static readonly Message ReadTheList =
        new("Read the fabric again where it was chosen, and put right the wrong one; if it is made in both, write in its name which one it is.");

    private static readonly ImmutableArray<Fact> Alike = [UnitFacts.Kind, UnitFacts.Fabric, UnitFacts.Colour, UnitFacts.Opacity, UnitFacts.HeadCover];

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("units-unlike", "Units side by side are unlike", Severity.Caution, Phase.Order,
        new Source(Source.CommonPractice, "of all units of an opening: kind, fabric, color, opacity and head cover are the same; "
            + "of all units in one fabric and color: opacity"));

    /// <inheritdoc/>
    public override Outcome Judge(Window subject)
    {
        var units = subject.Units;
        var fabrics = Outcome.All(units.Select(OfTwoOpacities));
        if (units.Length < 2)
            return fabrics ?? (Outcome)new Outcome.DoesNotApply();
        Outcome.NotChecked? unknown = null;
        var faults = new List<Outcome.Found>();
        foreach (var fact in Alike)
        {
            var known = units.Where(u => u.Item.Latest(fact)?.Value is not null).ToList();
            if (known.FirstOrDefault(u => known.Exists(v => IsBeside(u, v) && !IsSame(ValueOf(u, fact), ValueOf(v, fact)))) is { } first)
                faults.Add(Found(subject, fact, known, known.First(u => !IsSame(ValueOf(u, fact), ValueOf(first, fact)))));
            else if (known.Count < units.Length)
                unknown ??= NotChecked.Of(units.First(u => u.Item.Latest(fact)?.Value is null), fact);
        }
        return Outcome.All([.. faults, fabrics]) ?? unknown ?? (Outcome)new Outcome.Fine();
    }

    private static Outcome.Found Found(Window window, Fact fact, IEnumerable<Unit> known, Unit other) => new(
        Unlike.With(Arg.Label(fact), Arg.All(known.Select(u => (Arg)OfUnit.With(Arg.Name(u), Arg.Value(fact, ValueOf(u, fact)))))),
        window.Units.All(Moment.NotOrdered) ? ChooseOne.With(Arg.Name(window))
            : window.Units.Any(u => u.BoxIsHere || Moment.Hangs(u)) ? AgreeOrOrderAgain : CallToday, FieldRef.To(other.Item, fact));

    /// <summary>The fabric of a unit that is written with another opacity at another window; what differs side by side is told as such.</summary>
    private static Outcome.Found? OfTwoOpacities(Unit unit)
    {
        if (Cloth(unit) is not { } cloth || unit.Item.Get(UnitFacts.Opacity) is not { } opacity)
            return null;
        var others = unit.House.UnitsAt(Lookups.UnitsByCloth, cloth)
            .Where(u => u.Window.Id != unit.Window.Id && u.Item.Get(UnitFacts.Opacity) is { } theirs && theirs != opacity).ToList();
        return others is [var other, ..]
            ? new Outcome.Found(
                TwoOpacities.With(Arg.Typed(unit.Item.Get(UnitFacts.Fabric)!), Arg.Typed(unit.Item.Get(UnitFacts.Colour)!),
                    Arg.Value(UnitFacts.Opacity, opacity), Arg.Name(unit),
                    Arg.Of(others.Select(o => Arg.Value(UnitFacts.Opacity, o.Item.Get(UnitFacts.Opacity)!.Value)),
                        Arg.Value(UnitFacts.Opacity, other.Item.Get(UnitFacts.Opacity)!.Value)),
                    Arg.Of(others.Select(o => Arg.Name(o)), Arg.Name(other))),
                ReadTheList, FieldRef.To(unit.Item, UnitFacts.Opacity))
            : null;
    }

    /// <summary>The fabric and color of a unit as one name; null until both are chosen.</summary>
    internal static string? Cloth(Unit unit) => unit.Item.Get(UnitFacts.Fabric) is { } fabric && unit.Item.Get(UnitFacts.Colour) is { } color
        ? $"{ShownText.Key(fabric)} / {ShownText.Key(color)}" : null;

    private static object ValueOf(Unit unit, Fact fact) => unit.Item.Latest(fact)!.Value!;

    private static bool IsBeside(Unit one, Unit other) => one.Position is null || one.Position != other.Position;

    private static bool IsSame(object one, object other) =>
        (one, other) is (string a, string b) ? SameName.Comparer.Equals(a.Trim(), b.Trim()) : one.Equals(other);
}
