using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;

namespace TrimOut.Core.Wording;

/// <summary>What stands in a place of a message: a figure with its unit, a reference to an item or a fact, something typed, or another sentence.</summary>
public abstract record Arg
{
    private protected Arg() { }

    /// <summary>Its stored form, which tells two findings apart: exact, without words, names and units of the reader. Empty for what is only words.</summary>
    public string Figure => FigureAs(StoredAs.Now);

    /// <summary>Its stored form as a release had it.</summary>
    internal abstract string FigureAs(StoredAs form);

    /// <summary>Whether a sentence in it has a tag.</summary>
    internal static bool IsTagged(Arg arg) => arg switch
    {
        SentenceArg part => part.Sentence.IsTagged,
        ListArg list => list.Args.Any(IsTagged),
        StandsForArg shown => IsTagged(shown.Shown),
        _ => false,
    };

    /// <summary>How it reads.</summary>
    public abstract string For(Reader reader);

    /// <summary>A length of an opening, a tail or a bracket: to the nearest mark of the tape of the reader's units.</summary>
    public static implicit operator Arg(Length length) => new LengthArg(length, LengthAs.Opening);

    /// <summary>A voltage, to three decimals.</summary>
    public static implicit operator Arg(Voltage volts) => new NumberArg(volts.Volts, "V", null);

    /// <summary>A current, to three decimals.</summary>
    public static implicit operator Arg(Current amperes) => new NumberArg(amperes.Amperes, "A", null);

    /// <summary>A count.</summary>
    public static implicit operator Arg(int count) => new NumberArg(count, "", null);

    /// <summary>Another sentence, or a part of one.</summary>
    public static implicit operator Arg(Sentence sentence) => new SentenceArg(sentence);

    /// <summary>Words that stand alone.</summary>
    public static implicit operator Arg(Message words) => new SentenceArg(words);

    /// <summary>A length of a cable run, in feet and inches or in metres: to the nearest mark of the tape where it was worked out finer.</summary>
    public static Arg Run(Length length) => new LengthArg(length, LengthAs.Run);

    /// <summary>The most that a run may be, to a hundredth of a foot or metre, rounded down.</summary>
    public static Arg Limit(Length length) => new LengthArg(length, LengthAs.Limit);

    /// <summary>A length that was worked out: to the nearest mark of the tape.</summary>
    public static Arg About(Length length) => new LengthArg(length, LengthAs.About);

    /// <summary>A length that must be reached, such as more cable or more room: to the next mark of the tape that is not smaller.</summary>
    public static Arg AtLeast(Length length) => new LengthArg(length, LengthAs.AtLeast);

    /// <summary>A length that must not be passed: to the next mark of the tape that is not larger.</summary>
    public static Arg AtMost(Length length) => new LengthArg(length, LengthAs.AtMost);

    /// <summary>Cable to bring: whole feet or metres, rounded up.</summary>
    public static Arg Whole(Length length) => new LengthArg(length, LengthAs.Whole);

    /// <summary>A number with its unit, to three decimals or to as many as are asked for.</summary>
    public static Arg Number(decimal number, string unit = "", int? decimals = null) => new NumberArg(number, unit, decimals);

    /// <summary>A resistance, or that the loop is open.</summary>
    public static Arg Loop(Resistance ohms) => new LoopArg(ohms);

    /// <summary>The name of an item, whatever it is called when it is read.</summary>
    public static Arg Name(Item item) => new NameArg(item.Id);

    /// <summary>The name of a subject, whatever it is called when it is read.</summary>
    public static Arg Name(Subject subject) => new NameArg(subject.Id);

    /// <summary>The label of a fact, in small letters or as it stands.</summary>
    public static Arg Label(Fact fact, bool small = true) => new LabelArg(fact, small);

    /// <summary>The value of a fact as it is shown for an item: a choice in the reader's words, everything else as typed.</summary>
    public static Arg Value(Fact fact, object value) => new ValueArg(fact, value);

    /// <summary>The mark on a cable's jacket, the same in every language.</summary>
    public static Arg Mark(CableListing listing) => new MarkArg(listing);

    /// <summary>The label of a step.</summary>
    public static Arg Label(Step step) => new StepArg(step);

    /// <summary>What somebody typed, as it was typed.</summary>
    public static Arg Typed(string text) => new TypedArg(text);

    /// <summary>A day and a time as a device's clock had it.</summary>
    public static Arg When(DateTimeOffset at) => new TimeArg(at);

    /// <summary>All of them, with the same text between each two. Their order is how they read, and no figure.</summary>
    public static Arg All(IEnumerable<Arg> args, string between = ", ") => new ListArg([.. args], between);

    /// <summary>Reads as what is shown, and stands for all of these: other ones of them are another figure. Of none it is no figure.</summary>
    public static Arg Of(IEnumerable<Arg> all, Arg shown) => new StandsForArg(shown, (ListArg)All(all));

    /// <summary>A limit as a code states it in both units: the reader's own first. It is the same whatever was found, and no figure.</summary>
    public static Arg Rule(string inches, string millimetres) => new RuleArg(inches, millimetres);
}
