using System.Globalization;
using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;

namespace TrimOut.Core.Wording;

/// <summary>How finely the lengths of openings read.</summary>
internal enum LengthsAs
{
    /// <summary>To the marks of a tape.</summary>
    OnTape,

    /// <summary>Without loss, where a person typed them finer than that, or the marks of a tape would hide what differs.</summary>
    Exact,

    /// <summary>As sentences of earlier releases had them: what was worked out in decimals.</summary>
    Decimals,
}

/// <summary>How a length reads.</summary>
internal enum LengthAs
{
    Opening,
    Run,
    Limit,
    About,
    AtLeast,
    AtMost,
    Whole,
}

/// <summary>The forms in which releases stored figures with waivers.</summary>
internal enum StoredAs
{
    /// <summary>As now: what was typed can't be taken for several figures, and what stands for others is all of these.</summary>
    Now,

    /// <summary>What was typed as it stands; what stands for others is all of these.</summary>
    Members,

    /// <summary>What was typed as it stands; what stands for others is what is shown of them.</summary>
    Shown,

    /// <summary>The same without tags, and lists in the order in which they read.</summary>
    Untagged,
}

internal sealed record LengthArg(Length Length, LengthAs As) : Arg
{
    internal override string FigureAs(StoredAs form) => NumberText.Plain(Length.Millimetres) + " mm";

    /// <summary>Whether it is held against other lengths of openings, and rounded to the marks of a tape.</summary>
    public bool OnTape => As is LengthAs.Opening or LengthAs.About or LengthAs.AtLeast or LengthAs.AtMost;

    public override string For(Reader reader) => reader.Figure(OnTape && reader.Lengths != LengthsAs.OnTape ? Finer(reader) : (As, reader.Units) switch
    {
        (LengthAs.AtLeast, var units) => Length.RoundUp(TapeMark.Of(units)).Show(units),
        (LengthAs.AtMost, var units) => Length.RoundDown(TapeMark.Of(units)).Show(units),
        (LengthAs.Opening or LengthAs.About, var units) => ToMark(TapeMark.Of(units)).Show(units),
        (LengthAs.Run, var units) => Length.ShowRun(units),
        (LengthAs.Limit, DisplayUnits.Inches) => NumberText.Show(Length.RoundDown(Length.FromFeet(0.01m)).Feet, "ft"),
        (LengthAs.Limit, _) => NumberText.Show(Length.RoundDown(Length.FromMillimetres(10)).Metres, "m"),
        (_, DisplayUnits.Inches) => NumberText.Show(Math.Ceiling(Length.Feet), "ft"),
        _ => NumberText.Show(Math.Ceiling(Length.Metres), "m"),
    });

    /// <summary>Whether it reads like another length that it is not.</summary>
    public bool LooksLike(LengthArg other, Reader reader) => OnTape && Length != other.Length && For(reader) == other.For(reader);

    // What is there at all is never said to be nothing.
    private Length ToMark(Length mark) => Length > Length.Zero && Length < mark ? mark : Length.RoundNearest(mark);

    private string Finer(Reader reader) => As == LengthAs.Opening || (As != LengthAs.About && reader.Lengths == LengthsAs.Exact) ? Length.Show(reader.Units)
        : reader.Units == DisplayUnits.Inches ? NumberText.Show(Length.Inches, "in")
        : NumberText.Show(Math.Round(Length.Millimetres, 2), "mm");
}

internal sealed record NumberArg(decimal Amount, string Unit, int? Decimals) : Arg
{
    internal override string FigureAs(StoredAs form) => NumberText.Plain(Amount) + (Unit.Length > 0 ? " " + Unit : "");

    public override string For(Reader reader)
    {
        var number = Decimals is { } places ? Amount.ToString("F" + places.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)
            : Amount.ToString("0.###", CultureInfo.InvariantCulture);
        return reader.Figure(Unit.Length > 0 ? $"{number} {Unit}" : number);
    }
}

internal sealed record LoopArg(Resistance Ohms) : Arg
{
    internal override string FigureAs(StoredAs form) => Ohms == LoopReading.Open ? "open" : NumberText.Plain(Ohms.Ohms) + " ohm";

    public override string For(Reader reader) => Ohms == LoopReading.Open ? reader.Words("open") : reader.Figure(Ohms.ToString());
}

internal sealed record NameArg(string Item) : Arg
{
    internal override string FigureAs(StoredAs form) => Item;

    public override string For(Reader reader) => reader.House.Find(Item) is { } item ? reader.NameOf(item) : "-";
}

internal sealed record LabelArg(Fact Fact, bool Small) : Arg
{
    internal override string FigureAs(StoredAs form) => Fact.Name;

    public override string For(Reader reader)
    {
        var label = reader.LabelOf(Fact);
        // Only English puts a label into the middle of a sentence in small letters: other languages have capitals of their own.
        return Small && label == Fact.Label ? char.ToLowerInvariant(label[0]) + label[1..] : label;
    }
}

internal sealed record ValueArg(Fact Fact, object Content) : Arg
{
    internal override string FigureAs(StoredAs form) => form == StoredAs.Now ? Stored.Plain(Fact.WriteAny(Content)) : Fact.WriteAny(Content);

    public override string For(Reader reader)
    {
        var shown = Fact.Show(Content, reader.House);
        return Content switch
        {
            _ when Fact.IsChoice => reader.ChoiceOf(Fact, shown),
            ItemRef to => reader.House.Find(to.Id) is { Removed: false } item ? reader.NameOf(item) : reader.Words(shown),
            string typed => FactTable.IsKit(Fact.Subject) ? KitWords.In(reader.Words, typed) : typed,
            PartCounts or StepMark => shown,
            Resistance ohms when ohms == LoopReading.Open => reader.Words(shown),
            _ => reader.Figure(shown),
        };
    }
}

internal sealed record MarkArg(CableListing Listing) : Arg
{
    internal override string FigureAs(StoredAs form) => KebabCase.Of(Listing);

    public override string For(Reader reader) => KebabCase.Of(Listing).ToUpperInvariant();
}

internal sealed record StepArg(Step Step) : Arg
{
    internal override string FigureAs(StoredAs form) => Step.Id;

    public override string For(Reader reader) => reader.Words(Step.Label);
}

internal sealed record TypedArg(string Text) : Arg
{
    internal override string FigureAs(StoredAs form) => $"\"{(form == StoredAs.Now ? Stored.Quoted(Text) : Text)}\"";

    public override string For(Reader reader) => Text;
}

internal sealed record TimeArg(DateTimeOffset At) : Arg
{
    internal override string FigureAs(StoredAs form) => At.ToString("O", CultureInfo.InvariantCulture);

    public override string For(Reader reader) => At.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
}

internal sealed record SentenceArg(Sentence Sentence) : Arg
{
    internal override string FigureAs(StoredAs form) => Bracketed(Sentence.FiguresAs(form));

    public override string For(Reader reader) => Sentence.For(reader);

    private static string Bracketed(string figures) => figures.Length > 0 ? $"({figures})" : "";
}

internal sealed record ListArg(Arg[] Args, string Between) : Arg
{
    internal override string FigureAs(StoredAs form) =>
        string.Join(", ", Args.Select(a => a.FigureAs(form)) is var figures && form == StoredAs.Untagged ? figures : figures.Order(StringComparer.Ordinal));

    public override string For(Reader reader) => string.Join(Between, Args.Select(a => a.For(reader)));

    public bool Equals(ListArg? other) => other is not null && Between == other.Between && Args.AsSpan().SequenceEqual(other.Args);

    public override int GetHashCode() => Args.Length;
}

internal sealed record StandsForArg(Arg Shown, ListArg Members) : Arg
{
    internal override string FigureAs(StoredAs form) => (form is StoredAs.Now or StoredAs.Members ? Members : Shown).FigureAs(form);

    public override string For(Reader reader) => Shown.For(reader);
}

internal sealed record RuleArg(string Inches, string Millimetres) : Arg
{
    internal override string FigureAs(StoredAs form) => "";

    public override string For(Reader reader) => reader.Units == DisplayUnits.Inches
        ? $"{reader.Figure(Inches)} ({reader.Figure(Millimetres)})"
        : $"{reader.Figure(Millimetres)} ({reader.Figure(Inches)})";
}
