using System.Globalization;
using TrimOut.Core.Decisions;
using TrimOut.Core.History;
using TrimOut.Core.Units;
using TrimOut.HouseFile;
using TrimOut.Testing;

namespace TrimOut.Benchmarks.Terminals;

/// <summary>The job sheet of a house of 500 units against a plain table of the same rows, in one run.</summary>
internal static class Screens
{
    private const int Units = 500;
    private const int Keys = 60;
    private const int Starts = 9;
    private const string Down = "\u001b[B";

    public static void Measure(string folder)
    {
        var house = Path.Combine(folder, "five-hundred.trimout");
        Make(house);
        var sample = Path.Combine(folder, "sample.trimout");
        using (HouseOnDisk.Create(sample, TimeProvider.System, SampleHouse.Changes("ridge-house")))
        {
        }
        var here = AppContext.BaseDirectory;
        var builds = new Builds(folder);
        Console.WriteLine("Making the tool and the native build; that takes some minutes.");
        var (built, bareBuilt) = (Path.Combine(here, "trimout"), builds.BareBuilt());
        var (tool, native, bareNative) = (builds.Tool(), builds.Native(), builds.BareNative());
        Console.WriteLine($"{Units} units, 80 x 24, {Keys} keys; medians, and the 95th of 100");

        var (bare, bareOfNative) = (First(folder, $"\"{bareBuilt}\"", "one line"), First(folder, $"\"{bareNative}\"", "one line"));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"bare program: first line {bare:0.0} ms; native {bareOfNative:0.0} ms"));
        var peer = $"\"{Path.Combine(here, "TrimOut.Benchmarks")}\"";
        var table = Try(folder, $"{peer} table-peer {Units.ToString(CultureInfo.InvariantCulture)}", "W001");
        Print("plain table", table, table, bare);
        foreach (var (name, program, of) in new[] { ("as built", built, bare), ("as a tool", tool, bare), ("native", native, bareOfNative) })
        {
            Print($"job sheet, {name}", Try(folder, $"\"{program}\" open --by Ash \"{house}\"", "W001"), table, of);
            var first = First(folder, $"\"{program}\" open --by Ash \"{sample}\"", "Living room");
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  the sample            {first:0} ms, this / bare program {first / of:0.0}"));
            var none = First(folder, $"\"{program}\" --by Ash", "Sample jobs");
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  the list of houses    {none:0} ms, this / bare program {none / of:0.0}"));
        }
    }

    private static void Print(string name, Figures f, Figures table, double bare) => Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
        $"""
        {name}
          key to settled paint  {f.Median:0.0} ms ({f.Late:0.0}), plain table / this {table.Median / f.Median:0.0}
          bytes a key           {f.Bytes} ({f.MostBytes})
          at rest, 10 s         {f.Rest:0.00} % of a core, {f.RestBytes} bytes
          units in sight        {f.Sight:0} ms, this / bare program {f.Sight / bare:0.0}
          first full paint      {f.First:0} ms, this / bare program {f.First / bare:0.0}
        """));

    private static double First(string folder, string command, string text) => Starting(folder, command, text).Full;

    private static (double Sight, double Full) Starting(string folder, string command, string text)
    {
        var times = Enumerable.Range(0, Starts).Select(_ =>
        {
            using var run = new TerminalRun(folder, command);
            var full = run.FirstPaint(text).TotalMilliseconds;
            return (Sight: run.FirstSight.TotalMilliseconds, Full: full);
        }).ToList();
        return (times.Select(t => t.Sight).Order().ElementAt(Starts / 2), times.Select(t => t.Full).Order().ElementAt(Starts / 2));
    }

    private static Figures Try(string folder, string command, string text)
    {
        var (sight, first) = Starting(folder, command, text);
        using var run = new TerminalRun(folder, command);
        run.FirstPaint(text);
        run.Key(Down);
        var keys = Enumerable.Range(0, Keys).Select(_ => run.Key(Down)).ToList();
        var times = keys.Select(k => k.Time.TotalMilliseconds).Order().ToList();
        var bytes = keys.Select(k => k.Bytes).Order().ToList();
        var (percent, restBytes) = run.Idle(TimeSpan.FromSeconds(10));
        return new Figures(sight, first, times[Keys / 2], times[Keys * 95 / 100], bytes[Keys / 2], bytes[Keys * 95 / 100], percent, restBytes);
    }

    private static void Make(string path)
    {
        using var store = HouseOnDisk.Create(path, TimeProvider.System);
        var scribe = new Scribe(store, TimeProvider.System, "bench");
        scribe.Record(CommonPracticeKit.NewHouse("Five hundred", DisplayUnits.Inches).Value);
        for (var at = 1; at <= Units; at++)
            scribe.Record(QuickWindow.Read($"W{at:000} roller left 36x60 S floor inside panel @Room {at / 10}", scribe.House).Value.Add(scribe.House).Value);
    }

    private sealed record Figures(double Sight, double First, double Median, double Late, long Bytes, long MostBytes, double Rest, long RestBytes);
}
