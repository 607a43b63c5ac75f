using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Measures;

/// <summary>The second pass of measuring agrees with the first.</summary>
/// <remarks>
/// <para>Why: one of the two is wrong, and a unit can't be made wider.</para>
/// <para>To clear: a third pass; put right the one that it speaks against.</para>
/// </remarks>
public sealed class PassesDisagree : WindowCheck
{
    private static readonly Message WidthsDisagree = new("The first pass gives a width of {0}, the second {1}: {2} apart.", "width");
    private static readonly Message HeightsDisagree = new("The first pass gives a height of {0}, the second {1}: {2} apart.", "height");
    private static readonly Message MeasureThird = new("Measure a third time, all three places, and put right the pass that it speaks against.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("passes-disagree", "First and second measure disagree", Severity.Stop, Phase.Measure,
        new Source(Source.CommonPractice, "second width - smallest width and second height - largest height within the limit"));

    /// <inheritdoc/>
    public override Outcome Judge(Window subject)
    {
        if (subject.House.Job.Get(HouseFacts.PassLimit) is not { } limit)
            return NotChecked.Of(new JobItself(subject.House), HouseFacts.PassLimit);
        var width = Judge(subject, limit, WidthsDisagree, subject.SmallestWidth, WindowFacts.WidthTop, WindowFacts.WidthAgain);
        var height = Judge(subject, limit, HeightsDisagree, subject.LargestHeight, WindowFacts.HeightLeft, WindowFacts.HeightAgain);
        return Outcome.All(width as Outcome.Found, height as Outcome.Found) ?? NotChecked.All(width, height) ?? height;
    }

    private Outcome Judge(Window window, Length limit, Message disagree, Length? first, Fact<Length> firstFact, Fact<Length> secondFact)
    {
        if (first is not { } before)
            return NotChecked.Of(window, firstFact);
        if (window.Item.Get(secondFact) is not { } second)
            return NotChecked.Of(window, secondFact);
        var apart = (second - before).Abs();
        var working = Working.Of(Info.Source.Formula, () =>
            [("first pass", before.In(window)), ("second pass", second.In(window)), ("apart", apart.In(window)), ("limit", limit.In(window))]);
        return apart <= limit
            ? new Outcome.Fine(working)
            : new Outcome.Found(disagree.With(before, second, apart), MeasureThird, FieldRef.To(window.Item, secondFact), working);
    }
}
