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
        var supply = new Option<string>("--supply") { Description = "Volts at the panel.", HelpName = "volts", DefaultValueFactory = _ => "12" };
        var least = new Option<string>("--least") { Description = "The least volts that must arrive.", HelpName = "volts", DefaultValueFactory = _ => "10.2" };
        var warmest = new Option<string>("--warmest") { Description = "Temperature of the conductor in degrees Celsius.", HelpName = "degrees", DefaultValueFactory = _ => "30" };
        var solid = new Option<bool>("--solid") { Description = "One solid wire per conductor rather than strands." };
        var verb = new Command("what-if", "Work out what arrives over a cable. Ends with 1 when it is too little.") { length, conductor, current, supply, least, warmest, solid };
        verb.SetAction(parsed =>
        {
            var made = parsed.GetValue(solid) ? Stranding.Solid : Stranding.Stranded;
            var answer =
                Number(parsed.GetValue(supply), "supply volts").Then(volts =>
                Number(parsed.GetValue(least), "least volts").Then(fewest =>
                Number(parsed.GetValue(warmest), "degrees").Then(degrees =>
                Number(parsed.GetValue(current), "amperes").Then(amps =>
                LengthText.Read(parsed.GetValue(length), DisplayUnits.Inches, LengthScale.Run).Then(run =>
                ConductorSize.Read(parsed.GetValue(conductor)).Then(size =>
                WhatIf.Ask(size, made, new Temperature(degrees), new Voltage(volts), run, new Current(amps), new Voltage(fewest)).Then<(WhatIf What, int? Thinnest)>(what =>
                    (what, WhatIf.ThinnestGauge(made, new Temperature(degrees), what.Supply, what.OneWay, what.Current, what.Least)))))))));
            if (!answer.Ok)
            {
                Common.Say(answer.Reason!);
                return ExitCode.Usage;
            }
            Console.Out.Write(Text(answer.Value.What, answer.Value.Thinnest));
            return answer.Value.What.Margin.Volts < 0 ? ExitCode.OpenStops : ExitCode.Fine;
        });
        return verb;
    }

    internal static string Text(WhatIf what, int? thinnest) => string.Create(CultureInfo.InvariantCulture,
        $"{what.Arrives.Volts:0.000} V arrive of {what.Supply}: {what.LostPercent:0.0} % are lost over {what.Loop.Ohms:0.000} ohm out and back.\n" +
        $"{(what.Margin.Volts >= 0 ? $"Enough: {what.Margin.Volts:0.000} V to spare" : $"That is too little: {-what.Margin.Volts:0.000} V short")} of {what.Least}. The longest run, one way, is {what.Longest.RoundDown(Length.FromFeet(0.1m)).Feet:0.0} ft ({what.Longest.RoundDown(Length.FromMillimetres(10)).Metres:0.00} m).\n" +
        $"{(thinnest is { } gauge ? $"The thinnest gauge that serves is {gauge} AWG." : "No gauge up to 10 AWG serves.")} The maker's table may ask for a shorter run: the tighter of the two governs.\n");

    private static Result<decimal> Number(string? typed, string what) => NumberText.Read(typed, what, -1000, 1000, ("", 1), ("v", 1), ("a", 1), ("c", 1));
}
