using System.Globalization;
using TrimOut.Core.Facts.Forms;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;

namespace TrimOut.Core.Facts;

/// <summary>Short ways to declare the facts of one kind of item.</summary>
internal sealed class Declare(ItemKind subject)
{
    /// <summary>The most characters of a note or a reason: a page of an e-mail that is pasted.</summary>
    public const int Note = 2_000;

    /// <summary>The most that is kept as a reading, a thousand megohms: past that a meter reads open.</summary>
    private const decimal MostOhms = 1_000_000_000;

    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;

    // What a house was measured to be is kept as it stands; a value of a sheet that can't be is a slip, in a file too.
    private bool OfSheet => subject >= ItemKind.CoveringKind;

    public Fact<string> Text(string name, string label, string help, Phase? phase = null, int most = 120) =>
        Make(name, label, help, phase, new TextForm(most));

    /// <summary>A text that is evidence: who did it, by which number, with what. A word that says that it is not there is none.</summary>
    public Fact<string> Evidence(string name, string label, string help, Phase? phase = null, int most = 120) =>
        new(subject, name, label, help, phase, new TextForm(most)) { IsMoreThanNone = true };

    /// <summary>Somebody's name as evidence.</summary>
    public Fact<string> Somebody(string name, string label, string help, Phase? phase) =>
        new(subject, name, label, help, phase, new TextForm(120, ofSomebody: true)) { IsMoreThanNone = true };

    /// <summary>The mains voltage that something is made for, by its plate.</summary>
    public Fact<string> MainsVolts(string name, string label, string help) => Make(name, label, help, null, new MainsVoltsForm(new TextForm(40)));

    public Fact<Length> Opening(string name, string label, string help, Phase? phase, decimal leastInches, decimal mostInches) =>
        Make(name, label, help, phase, new LengthForm(Length.FromInches(leastInches), Length.FromInches(mostInches), LengthScale.Opening, OfSheet));

    public Fact<Length> OpeningOrNone(string name, string label, string help, Length none, decimal leastInches, decimal mostInches) =>
        Make(name, label, help, null, new LengthOrNoneForm(none,
            new LengthForm(Length.FromInches(leastInches), Length.FromInches(mostInches), LengthScale.Opening, OfSheet)));

    public Fact<Length> Reading(string name, string label, string help, Phase? phase, decimal leastInches, decimal mostInches, bool orNone = false) =>
        new(subject, name, label, help, phase,
            new LengthForm(Length.FromInches(leastInches), Length.FromInches(mostInches), LengthScale.Opening, noneIsZero: orNone))
        { IsReading = true };

    public Fact<Length> Cable(string name, string label, string help, Phase? phase, decimal mostFeet = 1000) =>
        Make(name, label, help, phase, new LengthForm(Length.Zero, Length.FromFeet(mostFeet), LengthScale.Run, OfSheet));

    public Fact<T> Choice<T>(string name, string label, string help, Phase? phase = null, bool reading = false)
        where T : struct, Enum => new(subject, name, label, help, phase, new ChoiceForm<T>()) { IsReading = reading };

    public Fact<ItemRef> Item(ItemKind kind, string name, string label, string help, Phase? phase = null) =>
        Make(name, label, help, phase, new ItemForm(kind));

    public Fact<int> Count(string name, string label, string help, Phase? phase, int least, int most) =>
        Make(name, label, help, phase, new ParsedForm<int>(string.Create(Invariant, $"{least} to {most}"),
            t => NumberText.Read(t, label.ToLowerInvariant(), least, most, ("", 1))
                .Then<int>(n => n == Math.Truncate(n) ? (int)n : new Refusal($"{t} is no whole number.")),
            n => n.ToString(Invariant)));

    public Fact<decimal> Number(string name, string label, string help, Phase? phase, decimal least, decimal most) =>
        Make(name, label, help, phase, new ParsedForm<decimal>($"{NumberText.Plain(least)} to {NumberText.Plain(most)}",
            t => NumberText.Read(t, label.ToLowerInvariant(), least, most, ("", 1)), NumberText.Plain));

    /// <summary>The hours that a phase took, all people together: to ten thousand, four years of work.</summary>
    public Fact<decimal> PhaseHours(Phase phase) => Number($"hours-{KebabCase.Of(phase)}", $"Hours, {phase.Full().ToLowerInvariant()}",
        $"What {phase.Full().ToLowerInvariant()} took, in hours of all people together; it goes before those of visits and marks.", null, 0.25m, 10_000);

    public Fact<DateOnly> Date(string name, string label, string help, Phase? phase = null) =>
        Make(name, label, help, phase, new DateForm());

    /// <summary>A time zone by its name in the time-zone database.</summary>
    public Fact<string> Zone(string name, string label, string help) =>
        Make(name, label, help, null, new ParsedForm<string>("America/Denver", t => Sun.HouseZone.Read(t), id => id));

    /// <summary>A time of the clock, to the minute.</summary>
    public Fact<TimeOnly> Clock(string name, string label, string help, Phase? phase) =>
        Make(name, label, help, phase, new ParsedForm<TimeOnly>("17:30, 5:30 pm", ClockText.Read, ClockText.Show));

    public Fact<string> Telephone(string name, string label, string help) => Make(name, label, help, null, new TelephoneForm());

    public Fact<Voltage> Volts(string name, string label, string help, Phase? phase, decimal least, decimal most, bool reading = false) =>
        new(subject, name, label, help, phase, new ParsedForm<Voltage>("volts, decimals with a point",
            t => NumberText.Read(t, "volts", least, most, ("", 1), ("v", 1), ("vdc", 1), ("v dc", 1), ("mv", 0.001m)).Then<Voltage>(n => new Voltage(n)),
            v => NumberText.Plain(v.Volts), v => $"{NumberText.Plain(v.Volts)} V"))
        { IsReading = reading };

    public Fact<Current> Amps(string name, string label, string help, Phase? phase = null, decimal least = 0.001m, decimal most = 50) =>
        Make(name, label, help, phase, new ParsedForm<Current>("amperes, decimals with a point",
            t => NumberText.Read(t, "amperes", least, most, ("", 1), ("a", 1), ("ma", 0.001m)).Then<Current>(n => new Current(n)),
            a => NumberText.Plain(a.Amperes), a => $"{NumberText.Plain(a.Amperes)} A"));

    public Fact<Resistance> Ohms(string name, string label, string help, Phase? phase) =>
        new(subject, name, label, help, phase, new ParsedForm<Resistance>("ohms, decimals with a point; or open",
            t => t.Equals("open", StringComparison.OrdinalIgnoreCase) || t.Equals("ol", StringComparison.OrdinalIgnoreCase)
                ? Electrical.LoopReading.Open
                : ReadOhms(t),
            r => r == Electrical.LoopReading.Open ? "open" : NumberText.Plain(r.Ohms),
            r => r == Electrical.LoopReading.Open ? "open" : $"{NumberText.Plain(r.Ohms)} ohm"))
        { IsReading = true };

    // A meter shows 2 M for two million ohms and 2 m for two thousandths: only there does a capital tell two values apart.
    private static Result<Resistance> ReadOhms(string typed)
    {
        var text = typed.Trim();
        foreach (var mega in (string[])["Mohms", "Mohm", "MOhm", "M\u03a9", "M"])
        {
            if (text.EndsWith(mega, StringComparison.Ordinal))
                return NumberText.Read(text[..^mega.Length], "ohms", 0, MostOhms, ("", 1_000_000)).Then<Resistance>(n => new Resistance(n));
        }
        return NumberText.Read(text, "ohms", 0, MostOhms, ("", 1), ("ohm", 1), ("ohms", 1), ("mohm", 0.001m), ("k", 1000), ("kohm", 1000),
            ("megohm", 1_000_000)).Then<Resistance>(n => new Resistance(n));
    }

    public Fact<Resistance> LeadOhms(string name, string label, string help) =>
        Make(name, label, help, null, new ParsedForm<Resistance>("ohms, decimals with a point",
            t => NumberText.Read(t, "ohms", 0, 10, ("", 1), ("ohm", 1), ("ohms", 1), ("mohm", 0.001m)).Then<Resistance>(n => new Resistance(n)),
            r => NumberText.Plain(r.Ohms), r => $"{NumberText.Plain(r.Ohms)} ohm"));

    public Fact<PartCounts> Parts(string name, string label, string help) =>
        Make(name, label, help, null, new ParsedForm<PartCounts>("count and part, a comma, the next count and part", PartCounts.Read, p => p.ToString()));

    public Fact<SpareCounts> Spares(string name, string label, string help) =>
        Make(name, label, help, null, new ParsedForm<SpareCounts>("count or percent and part, a comma, the next", SpareCounts.Read, s => s.ToString()));

    public Fact<Temperature> Degrees(string name, string label, string help, Phase? phase = null) =>
        Make(name, label, help, phase, new ParsedForm<Temperature>("degrees Celsius",
            t => NumberText.Read(t, "degrees Celsius", -40, 90, ("", 1), ("c", 1)).Then<Temperature>(n => new Temperature(n)),
            d => NumberText.Plain(d.Celsius), d => $"{NumberText.Plain(d.Celsius)} C"));

    public Fact<Azimuth> Direction(string name, string label, string help, Phase? phase = null) =>
        Make(name, label, help, phase, new ParsedForm<Azimuth>("SW or 225", t => Azimuth.Read(t), a => NumberText.Plain(a.Degrees), a => a.ToString()));

    public Fact<ConductorSize> Conductor(string name, string label, string help, Phase? phase = null) =>
        Make(name, label, help, phase, new ParsedForm<ConductorSize>("a gauge with AWG, or an area with mm2", t => ConductorSize.Read(t), s => s.ToString()));

    public Fact<TimeSpan> Seconds(string name, string label, string help) =>
        Make(name, label, help, null, new ParsedForm<TimeSpan>("seconds",
            t => NumberText.Read(t, "seconds", 0, 600, ("", 1), ("s", 1)).Then<TimeSpan>(n => Math.Round(n, 3) == n
                ? TimeSpan.FromMilliseconds((double)(n * 1000)) : new Refusal($"{t} is finer than seconds are kept: to a thousandth.")),
            s => NumberText.Plain((decimal)s.TotalSeconds), s => NumberText.Show((decimal)s.TotalSeconds, "s")));

    /// <summary>One value per other item, such as the position of each unit in a preset.</summary>
    public Fact<int> PercentPer(string name, string label, string help, Phase? phase) =>
        new(subject, name, label, help, phase, new ParsedForm<int>("0 to 100",
            t => NumberText.Read(t, "per cent", 0, 100, ("", 1), ("%", 1)).Then<int>(n => (int)n),
            n => n.ToString(Invariant), n => string.Create(Invariant, $"{n} %")))
        { IsKeyed = true };

    /// <summary>Yes or nothing per other item, such as which units a remote moves.</summary>
    public Fact<YesNo> YesPer(string name, string label, string help, Phase? phase) =>
        new(subject, name, label, help, phase, new ChoiceForm<YesNo>()) { IsKeyed = true };

    /// <summary>One mark per step.</summary>
    public Fact<StepMark> Marks() =>
        new(subject, StepMark.FactName, "Step", "Done, done although something spoke against it, or not needed; with the reason.", null,
            new ParsedForm<StepMark>("done, done although: reason, or not needed: reason", StepMark.Read, m => m.ToString()))
        { IsKeyed = true };

    private Fact<T> Make<T>(string name, string label, string help, Phase? phase, Form<T> form)
        where T : notnull => new(subject, name, label, help, phase, form);
}
