using System.Collections.Concurrent;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks;

/// <summary>Says which fact is missing and where it is filled in.</summary>
internal static class NotChecked
{
    /// <summary>Something that is missing of another item.</summary>
    public static readonly Message OfOther = new("{0} of {1}");

    /// <summary>What is missing, and nothing else.</summary>
    public static readonly Message Alone = new("{0}");

    /// <summary>A fact of an item.</summary>
    public static Outcome.NotChecked Of(Subject subject, Fact fact) => new(Named(subject, fact), FieldRef.To(subject.Item, fact));

    /// <summary>A fact of a part of the kit, or the part itself where none is chosen.</summary>
    /// <param name="sheet">The part; null when none is chosen.</param>
    /// <param name="fact">The fact.</param>
    /// <param name="chooser">The item that the part is chosen for.</param>
    /// <param name="choice">The fact that chooses it.</param>
    public static Outcome.NotChecked Of(KitSheet? sheet, Fact fact, Subject chooser, Fact choice) =>
        sheet is null ? Of(chooser, choice) : Of(sheet, fact);

    /// <summary>What has to be known before it can be said how wide a unit is made.</summary>
    /// <param name="unit">A unit of which <see cref="Unit.MadeWidth"/> is not known.</param>
    public static Outcome.NotChecked MadeWidthOf(Unit unit) => unit.MadeWidthLacks is not { } lacks ? Of(unit, UnitFacts.PartWidth)
        : lacks.Subject == ItemKind.CoveringKind ? Of(unit.Kind!, lacks)
        : lacks.Subject == ItemKind.Window ? Of(unit.Window, lacks)
        : Of(unit, lacks);

    /// <summary>Evidence of a step; nothing is missing where its phase was complete before the step or this evidence came.</summary>
    /// <param name="walker">The unit, panel or house that walks through the phase.</param>
    /// <param name="step">The id of the step.</param>
    /// <param name="subject">What the fact is about.</param>
    /// <param name="fact">The fact.</param>
    public static Outcome WhereAsked(Subject walker, string step, Subject subject, Fact fact) =>
        StepList.Find(step) is { } found && StepList.Shipped.IsAsked(found, walker) && StepList.Shipped.Asks(found, walker, fact)
            ? Of(subject, fact)
            : new Outcome.DoesNotApply();

    /// <summary>All that parts of one rule lack, each thing once, beginning with the first; null where none lacks anything.</summary>
    public static Outcome.NotChecked? All(params IEnumerable<Outcome?> parts) => parts.OfType<Outcome.NotChecked>().Distinct().ToList() switch
    {
        [] => null,
        [var one] => one,
        [var first, ..] all => first with { Missing = Alone.With(Arg.All(all.Select(m => (Arg)m.Missing), "; ")) },
    };

    // Thousands of windows wait for the same few facts, and each keeps what it waits for.
    private static readonly ConcurrentDictionary<Fact, Sentence> Blank = [];

    private static readonly Message OfSheet = new("{0} of {1} in the kit");
    private static readonly Message WasRemoved = new("{0}, for {1} was removed");
    private static readonly Message OfHouse = new("{0} of the house");

    private static Sentence Named(Subject subject, Fact fact) => subject switch
    {
        KitSheet sheet => OfSheet.With(Arg.Label(fact), Arg.Name(sheet)),
        JobItself => OfHouse.With(Arg.Label(fact)),
        _ when fact is Fact<ItemRef> names && subject.Item.Get(names) is { } gone && subject.House.Find(gone.Id) is { Removed: true } item =>
            WasRemoved.With(Arg.Label(fact), Arg.Name(item)),
        _ => Blank.GetOrAdd(fact, static f => Alone.With(Arg.Label(f))),
    };
}
