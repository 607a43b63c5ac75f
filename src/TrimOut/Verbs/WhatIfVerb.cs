using System.CommandLine;
using System.Globalization;
using TrimOut.Core;
using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Units;

namespace TrimOut.Verbs;

/// <summary><c>trimout what-if</c>: what arrives over a cable of a given length, conductor and current.</summary>
internal static class WhatIfVerb
{
    public static Command Build()
    {
        var length = new Argument<string>("LENGTH") { Description = "Length of the run, one way: \"62 ft\" or \"18.9 m\"." };
        var conductor = new Argument<string>("CONDUCTOR") { Description = "\"16 AWG\" or \"1.5 mm2\"." };
        var current = new Argument<string>("CURRENT") { Description = "Current in amperes." };
        var supply = new Option<string>("--supply") { Description = "Volts at the panel, by its sheet.", HelpName = "volts" };
        var least = new Option<string>("--least") { Description = "Minimum volts at the unit, by its sheet.", HelpName = "volts" };
        var warmest = new Option<string>("--warmest")
        {
            Description = "Temperature of the conductor in degrees Celsius.",
            HelpName = "degrees",
            DefaultValueFactory = _ => "30"
        };
        var solid = new Option<bool>("--solid") { Description = "One solid wire per conductor rather than strands." };
        var units = new Option<string>("--units")
        {
            Description = "Units on the one cable; their currents add.",
            HelpName = "number",
            DefaultValueFactory = _ =>
            "1"
        };
        var apart = new Option<string>("--apart") { Description = "Cable from each unit to the next.", HelpName = "length", DefaultValueFactory = _ => "0 ft" };
        var allows = new Option<string>("--sheet-allows")
        {
            Description = "Units that the maker's sheet allows on an output; more are refused.",
            HelpName = "number",
            DefaultValueFactory = _ => "1"
        };
        var table = new Option<string>("--table") { Description = "Longest run of the maker's table for this cable.", HelpName = "length" };
        var verb = new Command("what-if", "Work out what arrives over a cable. Ends with 1 when it is too little, too long, or not allowed.") { length,
            conductor, current, supply, least, warmest, solid, units, apart, allows, table };
        verb.SetAction(parsed =>
        {
            var made = parsed.GetValue(solid) ? Stranding.Solid : Stranding.Stranded;
            var answer =
                FromSheet(parsed.GetValue(supply), "supply volts", "panel", "--supply").Then(volts =>
                FromSheet(parsed.GetValue(least), "minimum volts", "unit", "--least").Then(fewest =>
                Number(parsed.GetValue(warmest), "degrees").Then(degrees =>
                Number(parsed.GetValue(current), "amperes").Then(amps =>
                LengthText.Read(parsed.GetValue(length), DisplayUnits.Inches, LengthScale.Run).Then(run =>
                ConductorSize.Read(parsed.GetValue(conductor)).Then(size =>
                Whole(parsed.GetValue(units), "units").Then(many =>
                Whole(parsed.GetValue(allows), "units allowed").Then(allowed =>
                LengthText.Read(parsed.GetValue(apart), DisplayUnits.Inches, LengthScale.Run).Then(between =>
                Table(parsed.GetValue(table)).Then(longest =>
                WhatIf.Ask(size, made, new Temperature(degrees), new Voltage(volts), run, new Current(amps), new Voltage(fewest), many, between)
                    .Then<(WhatIf What, int? Thinnest)>(what =>
                    (what with { Allowed = allowed, Table = longest.Most },
                        WhatIf.ThinnestGauge(made, new Temperature(degrees), what.Supply, what.OneWay, what.Current, what.Least, many, between)))))))))))));
            if (!answer.Ok)
            {
                Common.Say(answer.Reason!);
                return ExitCode.Usage;
            }
            Console.Out.Write(Text(answer.Value.What, answer.Value.Thinnest));
            return answer.Value.What is { IsAllowed: true, Margin.Volts: >= 0 } what && what.MarginLength >= Length.Zero ? ExitCode.Fine : ExitCode.OpenStops;
        });
        return verb;
    }

    internal static string Text(WhatIf what, int? thinnest) => string.Create(CultureInfo.InvariantCulture,
        $"{what.Arrives.Volts:0.000} V arrive of {what.Supply}{(what.Units > 1 ? " at the last unit" : "")}: {what.LostPercent:0.0} % are lost over " +
            $"{what.Loop.Ohms:0.000} ohm out and back.\n" +
        $"{(what.Margin.Volts >= 0 ? $"Enough: {what.Margin.Volts:0.000} V to spare" : $"That is too little: {-what.Margin.Volts:0.000} V short")} of " +
            $"{what.Least}. The longest run, one way{(what.Units > 1 ? " to the first unit" : "")}, is {Both(what.Longest)}.\n" +
        $"{Several(what)}{(thinnest is { } gauge ? $"The thinnest gauge that serves is {gauge} AWG." : "No gauge up to 10 AWG serves.")} {Governs(what)}\n");

    private static string Governs(WhatIf what) => what.LongestByTable is not { } table
        ? "The maker's table may ask for a shorter run: the tighter of the two governs."
        : $"The maker's table ends at {Both(table)}: {(what.TableGoverns ? "the table" : "voltage drop")} governs, with " +
            $"{(what.MarginLength < Length.Zero ? Both(what.MarginLength.Abs()) + " too much" : Both(what.MarginLength) + " to spare")}.";

    private static string Several(WhatIf what) => what.Units == 1 ? ""
        : string.Concat(what.Each.Select((tap, at) => string.Create(CultureInfo.InvariantCulture,
            $"Unit {at + 1}, {Both(tap.OneWay)} from the panel: {tap.Through.Amperes:0.###} A through its stretch, " +
                $"{Math.Max(0, tap.Arrives.Volts):0.000} V arrive.\n"))) +
            (what.IsAllowed ? ""
                : $"Refused, whatever arrives: the maker's sheet must allow {what.Units} units on an output, and {what.Allowed} " +
                    $"{(what.Allowed == 1 ? "is" : "are")} said to be allowed.\n");

    private static string Both(Length length) => string.Create(CultureInfo.InvariantCulture,
        $"{length.RoundDown(Length.FromFeet(0.1m)).Feet:0.0} ft ({length.RoundDown(Length.FromMillimetres(10)).Metres:0.00} m)");

    private static Result<LongestRun> Table(string? typed) => typed is null ? new LongestRun(null)
        : LengthText.Read(typed, DisplayUnits.Inches, LengthScale.Run).Then<LongestRun>(most => new LongestRun(most));

    private static Result<int> Whole(string? typed, string what) =>
        Number(typed, what).Then<int>(n => n == Math.Truncate(n) ? (int)n : new Refusal($"{typed} is no whole number of {what}."));

    private static Result<decimal> FromSheet(string? typed, string what, string part, string option) => typed is null
        ? new Refusal($"Read the {what} off the sheet of the {part}, and give them: {option} VOLTS. They differ from maker to maker.")
        : Number(typed, what);

    private static Result<decimal> Number(string? typed, string what) => NumberText.Read(typed, what, -1000, 1000, ("", 1), ("v", 1), ("a", 1), ("c", 1));

    private readonly record struct LongestRun(Length? Most);
}
