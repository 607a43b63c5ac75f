using System.Globalization;
using TrimOut.Core;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;
using Question = TrimOut.Core.Electrical.WhatIf;

namespace TrimOut.Screens.WhatIf;

/// <summary>What arrives over a cable: figures to play with, the kit's table and the physics side by side. Nothing of it is saved.</summary>
internal sealed record WhatIfScreen(WhatIfInputs Inputs, string? UnitId, string Of, int Selected) : IScreen
{
    public string Title => $"What if{(Of.Length == 0 ? "" : $", from {Of}")}";

    /// <summary>What the sign behind a figure means.</summary>
    public const string NobodyTyped = "* typed by nobody: what the program began with, or a cable of the kit";

    private const string NobodyTypedInShort = "* typed by nobody: begun with, or the kit's";

    /// <summary>What the other sign behind a figure means.</summary>
    public const string NobodyChecked = "? not checked against its sheet";

    public IReadOnlyList<Sign> Signs => [Sign.Words("?", "a figure that rests on a maker's sheet, and nobody checked it against that sheet yet"), Sign.Words("*", "a figure that nobody typed for this unit: what the program began with, or a cable of the kit")];

    /// <summary>Lines for the limits and what is said of them.</summary>
    private const int LimitLines = 9;

    /// <summary>A curve that is higher than this is no clearer.</summary>
    private const int CurveLines = 24;

    public string? TypesBy(ScreenContext context) => "enter";

    public IReadOnlyList<IKeyAction> Keys => WhatIfKeys.All;

    public static WhatIfScreen At(ScreenContext context, Unit? unit) => new(WhatIfInputs.From(context.House, unit), unit?.Id, unit?.Tag ?? "", 0);

    public Result<Question> Answer(House house, WhatIfInputs inputs) => inputs.Ask(house, Unit(house));

    private Unit? Unit(House house) => UnitId is null ? null : house.FindUnit(UnitId);

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var house = context.House;
        for (var y = 0; y < WhatIfRow.All.Count; y++)
        {
            var (row, current, at) = (WhatIfRow.All[y], y == Selected, y);
            area.PutSpot(1, y, 35, current, () => this with { Selected = at });
            area.PutFit(1, y, 19, row.Label, current ? Tone.Selected : Tone.Text);
            var shown = row.Show(Inputs, house);
            area.PutFit(20, y, 16, $" {shown}{(Inputs.IsBegun(row.Label) && shown != "-" ? " *" : "")}{(Inputs.IsUnchecked(row.Label) ? UncheckedValues.Mark : "")}", current ? Tone.Selected : Tone.Text);
        }
        var begun = WhatIfRow.All.Any(r => Inputs.IsBegun(r.Label) && r.Show(Inputs, house) != "-");
        var notes = (begun, Inputs.RestsOnUnchecked) switch
        {
            (true, true) => $"{NobodyTypedInShort}; {NobodyChecked}",
            (true, _) => NobodyTyped,
            (_, true) => NobodyChecked,
            _ => "",
        };
        area.PutFit(1, WhatIfRow.All.Count, area.Width - 2, notes, Tone.Dim);
        var answer = Answer(house, Inputs);
        if (!answer.Ok)
        {
            area.Part(40, 0, area.Width - 41, 8).PutWrapped(0, 0, 6, answer.Reason!, Inputs.Wanted is null ? Tone.Stop : Tone.Caution);
            return;
        }
        DrawArriving(area.Part(40, 0, area.Width - 41, WhatIfRow.All.Count), answer.Value, context);
        var limits = area.Part(1, WhatIfRow.All.Count + 1, area.Width - 2, area.Height - WhatIfRow.All.Count - 1);
        DrawLimits(limits, answer.Value, context);
        if (limits.Height > LimitLines + DropCurve.LeastLines)
            DropCurve.Draw(limits.Rows(LimitLines, Math.Min(CurveLines, limits.Height - LimitLines)), Inputs, answer.Value, house, context.Glyphs);
    }

    /// <summary>What is worked out, with the mark where a figure of it came off no sheet.</summary>
    private string Marked(string text) => UncheckedValues.Marked(text, Inputs.RestsOnUnchecked);

    private void DrawArriving(Area area, Question what, ScreenContext context)
    {
        var units = context.House.DisplayUnits;
        var enough = what.Margin.Volts >= 0;
        area.PutFit(0, 0, area.Width,
            Marked(string.Create(CultureInfo.InvariantCulture,
                $"{(enough ? "" : context.Glyphs.Stop + " ")}{what.Arrives.Volts:0.00} V arrive of {what.Supply}")),
            enough ? Tone.Strong : Tone.Stop);
        area.PutFit(0, 1, area.Width,
            Marked(string.Create(CultureInfo.InvariantCulture, $"{what.LostPercent:0.0} % lost, {what.Loop.Ohms:0.000} ohm out and back")), Tone.Text);
        if (what.Units == 1)
            return;
        var each = what.Each;
        for (var n = 0; n < each.Length && n + 2 < area.Height; n++)
        {
            area.PutFit(0, n + 2, area.Width, Marked(string.Create(CultureInfo.InvariantCulture,
                $"{n + 1}: {each[n].OneWay.ShowRounded(units, LengthScale.Run)}, {each[n].Through.Amperes:0.##} A: " +
                    $"{Math.Max(0, each[n].Arrives.Volts):0.00} V")), each[n].Arrives >= what.Least ? Tone.Text : Tone.Stop);
        }
    }

    private void DrawLimits(Area area, Question what, ScreenContext context)
    {
        var (units, cable) = (context.House.DisplayUnits, Inputs.InKit(context.House));
        string Run(Length length) => length.ShowRounded(units, LengthScale.Run);

        area.PutFit(0, 0, area.Width, "", Tone.Heading);
        area.PutFit(0, 0, 20, "", Tone.Heading);
        area.PutFit(20, 0, 27, $"Kit's table{(cable is null ? "" : $" ({cable.Name})")}", Tone.Heading);
        area.PutFit(48, 0, area.Width - 48, "Voltage drop", Tone.Heading);
        area.PutFit(0, 1, 19, "Longest run", Tone.Text);
        var governs = $" {context.Glyphs.Arrow} governs";
        var tableUnchecked = Inputs.IsTableUnchecked(context.House);
        var byTable = what.LongestByTable is { } table
            ? UncheckedValues.Marked(table.ShowAtMost(units, LengthScale.Run), tableUnchecked) + (what.TableGoverns ? governs : "") : "not in the kit";
        area.PutFit(20, 1, 27, byTable, what.TableGoverns ? Tone.Strong : Tone.Text);
        area.PutFit(48, 1, area.Width - 48,
            Marked(what.Longest.ShowAtMost(units, LengthScale.Run)) + (what.TableGoverns ? "" : governs), what.TableGoverns ? Tone.Text : Tone.Strong);
        var fits = what.MarginLength >= Length.Zero && what.Margin.Volts >= 0;
        area.PutFit(0, 2, 19, "Margin", Tone.Text);
        var margin = string.Create(CultureInfo.InvariantCulture, $"{what.Margin.Volts:+0.00;-0.00} V, ")
            + $"{(what.MarginLength < Length.Zero ? "-" : "+")}{Run(what.MarginLength.Abs())}{(fits ? "" : ": too long")}";
        area.PutFit(20, 2, area.Width - 20, UncheckedValues.Marked(margin, Inputs.RestsOnUnchecked || tableUnchecked), fits ? Tone.Strong : Tone.Stop);
        var thinnest = Inputs.Thinnest is { } gauge
            ? string.Create(CultureInfo.InvariantCulture, $"The thinnest gauge with which enough arrives is {gauge} AWG.")
            : "With no gauge up to 10 AWG enough arrives.";
        area.PutFit(0, 3, area.Width, Marked(thinnest), Tone.Text);
        var y = 4;
        if (what.Units > 1)
            y = area.PutWrapped(0, y, 2, UncheckedValues.Marked(Allows(what), WhatIfInputs.IsAllowedUnchecked(context.House, Unit(context.House))), what.IsAllowed ? Tone.Text : Tone.Stop);
        area.PutWrapped(0, y + 1, 3, what.Units == 1
            ? "volts = supply - current x 2 x length x ohms per meter. Ohm's law; conductors by ASTM B258 and IEC 60028, metric sizes by IEC 60228. " +
                "The tighter of table and voltage drop governs. Nothing here is saved."
            : "each stretch loses 2 x length x ohms per meter x current of all behind it. Ohm's law; conductors by ASTM B258 and IEC 60028, " +
                "metric sizes by IEC 60228. Nothing here is saved.", Tone.Dim);
    }

    private static string Allows(Question what) =>
        what.IsAllowed ? $"The sheet allows {what.Allowed} units on an output."
        : what.Allowed is { } most ? $"The sheet allows {(most == 1 ? "1 unit" : $"{most} units")} on an output: this is refused, whatever arrives."
        : "The kit does not say how many units an output may feed: this is refused until the sheet says so.";
}

/// <summary>Keys of the what-if.</summary>
internal static class WhatIfKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<WhatIfScreen>("enter", "Type", "Types the figure under the cursor.", (s, context) => Transition.Type(s, Edit(s, context))),
        new KeyAction<WhatIfScreen>("right", "More", "A little more: a longer run, a thicker gauge, one more unit.", (s, context) => Step(s, context, 1)),
        new KeyAction<WhatIfScreen>("left", "Less", "A little less.", (s, context) => Step(s, context, -1)),
        .. Moves.Through<WhatIfScreen>("figure", (s, _, by) => s with { Selected = Paging.Move(s.Selected, by, WhatIfRow.All.Count) }),
    ];

    private static Transition Step(WhatIfScreen s, ScreenContext context, int by)
    {
        var inputs = WhatIfRow.All[s.Selected].Step(s.Inputs, context.House, by);
        return inputs == s.Inputs && inputs.Wanted is not null ? Transition.Say(s, "Ask the sheet first: Enter types what it says.")
            : Refused(s, context, inputs) is { } reason ? Transition.Say(s, reason)
            : new Transition(s with { Inputs = inputs.Said(WhatIfRow.All[s.Selected].Label) });
    }

    private static Entry Edit(WhatIfScreen s, ScreenContext context)
    {
        var row = WhatIfRow.All[s.Selected];
        return new Entry(row.Label, row.IsBlank(s.Inputs) ? "" : row.Show(s.Inputs, context.House), row.Hint,
            (text, now) => Read(row, s, now, text).Then<Transition>(inputs => new Transition(s with { Inputs = inputs.Said(row.Label) })))
        {
            Echo = (text, now) => Read(row, s, now, text).Then<string>(_ => $"{row.Label}: {row.Hint}"),
        };
    }

    private static Result<WhatIfInputs> Read(WhatIfRow row, WhatIfScreen s, ScreenContext context, string text) =>
        row.Read(s.Inputs, context.House, text.Trim())
            .Then<WhatIfInputs>(inputs => Refused(s, context, inputs) is { } reason ? new Refusal(reason) : inputs);

    /// <summary>Which figure makes no sense; null while others are blank.</summary>
    private static string? Refused(WhatIfScreen s, ScreenContext context, WhatIfInputs inputs) =>
        inputs.Wanted is null && s.Answer(context.House, inputs) is { Ok: false } refused ? refused.Reason : null;
}
