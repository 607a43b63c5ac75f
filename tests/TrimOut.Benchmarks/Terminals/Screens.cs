using System.Diagnostics;
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
    private const string Down = "\u001b[B";

    public static void Measure(string folder)
    {
        var house = Path.Combine(folder, "five-hundred.trimout");
        Make(house);
        var here = AppContext.BaseDirectory;
        var peer = $"\"{Path.Combine(here, "TrimOut.Benchmarks")}\"";
        var published = Publish(Path.Combine(folder, "on-site"));
        Console.WriteLine($"{Units} units, 80 x 24, {Keys} keys; medians, and the 95th of 100");

        var bare = First(folder, $"{peer} bare-line", "one line");
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"bare program: first line {bare:0} ms"));
        var table = Try(folder, $"{peer} table-peer {Units.ToString(CultureInfo.InvariantCulture)}", "W001");
        Print("plain table", table, table, bare);
        Print("job sheet, as built", Try(folder, $"\"{Path.Combine(here, "trimout")}\" open --by Ash \"{house}\"", "W001"), table, bare);
        Print("job sheet, published for site", Try(folder, $"\"{published}\" open --by Ash \"{house}\"", "W001"), table, bare);
    }

    private static void Print(string name, Figures f, Figures table, double bare) => Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
        $"""
        {name}
          key to settled paint  {f.Median:0.0} ms ({f.Late:0.0}), plain table / this {table.Median / f.Median:0.0}
          bytes a key           {f.Bytes} ({f.MostBytes})
          at rest, 10 s         {f.Rest:0.00} % of a core, {f.RestBytes} bytes
          first paint           {f.First:0} ms, this / bare program {f.First / bare:0.0}
        """));

    /// <summary>The program as it goes to the laptop on site, by the profile that the read-me names.</summary>
    private static string Publish(string to)
    {
        var root = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(root.FullName, "TrimOut.sln")))
            root = root.Parent ?? throw new InvalidOperationException("The benchmark must run from a clone of the repository.");
        Console.WriteLine("Publishing the program; that takes a minute or two.");
        using var publish = Process.Start(new ProcessStartInfo("dotnet", ["publish", "src/TrimOut", "-p:PublishProfile=OnSite", "-o", to, "-v", "quiet"])
        { WorkingDirectory = root.FullName })!;
        publish.WaitForExit();
        return publish.ExitCode == 0 ? Path.Combine(to, "trimout") : throw new InvalidOperationException("The program could not be published.");
    }

    private static double First(string folder, string command, string text)
    {
        var times = Enumerable.Range(0, 5).Select(_ =>
        {
            using var run = new TerminalRun(folder, command);
            return run.FirstPaint(text).TotalMilliseconds;
        }).Order().ToList();
        return times[2];
    }

    private static Figures Try(string folder, string command, string text)
    {
        var first = First(folder, command, text);
        using var run = new TerminalRun(folder, command);
        run.FirstPaint(text);
        run.Key(Down);
        var keys = Enumerable.Range(0, Keys).Select(_ => run.Key(Down)).ToList();
        var times = keys.Select(k => k.Time.TotalMilliseconds).Order().ToList();
        var bytes = keys.Select(k => k.Bytes).Order().ToList();
        var (percent, restBytes) = run.Idle(TimeSpan.FromSeconds(10));
        return new Figures(first, times[Keys / 2], times[Keys * 95 / 100], bytes[Keys / 2], bytes[Keys * 95 / 100], percent, restBytes);
    }

    private static void Make(string path)
    {
        using var store = HouseOnDisk.Create(path, TimeProvider.System);
        var scribe = new Scribe(store, TimeProvider.System, "bench");
        scribe.Record(CommonPracticeKit.NewHouse("Five hundred", DisplayUnits.Inches).Value);
        for (var at = 1; at <= Units; at++)
            scribe.Record(QuickWindow.Read($"W{at:000} roller left 36x60 S floor inside panel @Room {at / 10}", scribe.House).Value.Add(scribe.House).Value);
    }

    private sealed record Figures(double First, double Median, double Late, long Bytes, long MostBytes, double Rest, long RestBytes);
}
