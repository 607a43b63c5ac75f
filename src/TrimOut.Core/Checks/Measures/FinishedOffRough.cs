using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Measures;

/// <summary>The finished opening is a little smaller than the rough one, by what plaster and trim take.</summary>
/// <remarks>
/// <para>Why: sizes that do not belong together were misread, changed over, measured before the trim was in, or taken at another window.</para>
/// <para>To clear: measure again; if it stays, put the rough size right. Each size counts by the middle one of its three.</para>
/// </remarks>
public sealed class FinishedOffRough : WindowCheck
{
    private static readonly Message ChangedOver = new("Finished {0} x {1} fits rough {2} x {3} only when width and height change places.");
    private static readonly Message WidthTooLarge =
        new("The finished width is {0} and the rough width {1}: plaster and trim take {2} or more.", "width-too-large");
    private static readonly Message HeightTooLarge =
        new("The finished height is {0} and the rough height {1}: plaster and trim take {2} or more.", "height-too-large");
    private static readonly Message WidthTooSmall =
        new("The finished width is {0} and the rough width {1}: {2} apart, and trim takes {3} at the most.", "width-too-small");
    private static readonly Message HeightTooSmall =
        new("The finished height is {0} and the rough height {1}: {2} apart, and trim takes {3} at the most.", "height-too-small");
    private static readonly Message PutIntoPlace = new("Measure width and height again, and put the pair right that is changed over.");
    private static readonly Message AfterTrim = new("Measure it again once plaster and trim are in; if it stays, put the rough size right.");
    private static readonly Message RightWindow = new("See that you stand at the right window and measure it again; if it stays, put the rough size right.");

    /// <summary>The least that plaster and trim take of a size, on both sides together: common practice, no published source.</summary>
    public static readonly Length Least = Length.FromInches(0, 1, 8);

    /// <summary>The most that they take: common practice, no published source.</summary>
    public static readonly Length Most = Length.FromInches(3);

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("finished-off-rough", "Finished size does not match the rough size", Severity.Stop, Phase.Measure,
        new Source(Source.CommonPractice, "1/8 in <= rough - finished <= 3 in, for width and height; each finished size is the middle one of its three"));

    /// <inheritdoc/>
    public override Outcome Judge(Window subject)
    {
        if (subject.Widths is not ({ } top, { } middle, { } bottom))
            return NotChecked.Of(subject, WindowFacts.WidthTop);
        if (subject.Heights is not ({ } left, { } centre, { } right))
            return NotChecked.Of(subject, WindowFacts.HeightLeft);
        var (width, height) = (MiddleOne(top, middle, bottom), MiddleOne(left, centre, right));
        var (wide, high) = (subject.RoughWidth, subject.RoughHeight);
        var working = Working.Of(Info.Source.Formula, () =>
        [
            ("finished", $"{width.In(subject)} x {height.In(subject)}"), ("rough", $"{wide?.In(subject) ?? "not known"} x {high?.In(subject) ?? "not known"}"),
        ]);
        if (wide is { } w && high is { } h && (!Fits(width, w) || !Fits(height, h)) && Fits(width, h) && Fits(height, w))
        {
            return new Outcome.Found(ChangedOver.With(width, height, w, h), PutIntoPlace, FieldRef.To(subject.Item, WindowFacts.WidthTop), working);
        }
        return Outcome.All(Off(subject, width, wide, WidthTooLarge, WidthTooSmall, WindowFacts.WidthTop, working),
            Off(subject, height, high, HeightTooLarge, HeightTooSmall, WindowFacts.HeightLeft, working)) as Outcome
            ?? (wide is null ? NotChecked.Of(subject, WindowFacts.RoughWidth)
            : high is null ? NotChecked.Of(subject, WindowFacts.RoughHeight)
            : new Outcome.Fine(working));
    }

    private static Outcome.Found? Off(Window window, Length finished, Length? known, Message tooLarge, Message tooSmall, Fact<Length> fact, Working working) =>
        known is not { } rough || Fits(finished, rough) ? null
        : rough - finished < Least
            ? new Outcome.Found(tooLarge.With(finished, rough, Least), AfterTrim, FieldRef.To(window.Item, fact), working)
            : new Outcome.Found(tooSmall.With(finished, rough, rough - finished, Most), RightWindow, FieldRef.To(window.Item, fact), working);

    private static bool Fits(Length finished, Length rough) => rough - finished >= Least && rough - finished <= Most;

    private static Length MiddleOne(Length a, Length b, Length c) => Length.Max(Length.Min(a, b), Length.Min(Length.Max(a, b), c));
}
